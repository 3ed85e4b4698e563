/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Texture;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;

/**
 * A photograph made here: a stock of two colours, a grey card of L* 50 and a white one beside it on a dark table, all
 * under a warm light that takes a tenth of the red, nearly a third of the green and more than half of the blue. What
 * the colours are without it is known.
 */
class SwatchPhotoTest {

    private static final double[] CAST = {0.9, 0.7, 0.45};
    private static final int SHELL = 0x8a5a3c;
    private static final int VEIN = 0xc9a86a;
    private static final int TABLE = 0x101010;
    /** L* 50 to 0.1: the encoded value of luminance 0.1842. */
    private static final int GREY = 0x777777;
    private static final double GREY_LIGHTNESS = Srgb.lab(GREY).l();
    private static final String CROP = "<crop x=\"120\" y=\"40\" width=\"240\" height=\"200\"/>";
    private static final String CARD = "<grey x=\"20\" y=\"20\" width=\"60\" height=\"60\" lightness=\"%s\"/>";

    @TempDir
    private Path folder;

    @BeforeEach
    void takeThePhotograph() throws IOException {
        BufferedImage photo = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 300; y++) {
            for (int x = 0; x < 400; x++) {
                int rgb = within(x, y, 20, 20, 60, 60) ? GREY : within(x, y, 20, 120, 60, 60) ? 0xffffff
                        : within(x, y, 120, 40, 240, 200) ? (x / 20 + y / 20) % 2 == 0 ? SHELL : VEIN : TABLE;
                photo.setRGB(x, y, cast(rgb, CAST));
            }
        }
        ImageIO.write(photo, "png", folder.resolve("shell.png").toFile());
    }

    private static boolean within(int x, int y, int left, int top, int width, int height) {
        return x >= left && x < left + width && y >= top && y < top + height;
    }

    private static int cast(int rgb, double[] light) {
        int seen = 0;
        for (int channel = 0; channel < 3; channel++) {
            double encoded = Srgb.encode(light[channel] * Srgb.decode((rgb >> 16 - 8 * channel & 0xff) / 255.0));
            seen = seen << 8 | (int) Math.round(255 * encoded);
        }
        return seen;
    }

    private Stock stock(String inTheTexture) throws IOException, StoreException {
        return Stock.of(material(inTheTexture));
    }

    private Material material(String inTheTexture) throws IOException, StoreException {
        Path catalogue = folder.resolve("studio.catalogue");
        Files.writeString(catalogue, """
                <?xml version="1.0" encoding="UTF-8"?>
                <catalogue:Catalogue xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI"
                    xmlns:catalogue="http://pollex.org/model/catalogue" format="1" name="Studio">
                  <materials id="shell" name="shell" lab="45 14 22">
                    <texture kind="swatch" scale="40" picture="shell.png">%s</texture>
                  </materials>
                </catalogue:Catalogue>
                """.formatted(inTheTexture));
        return ModelFiles.CATALOGUES.load(catalogue).getMaterials().get(0);
    }

    private Stock good(String inTheTexture) throws IOException, StoreException {
        Stock stock = stock(inTheTexture);
        assertEquals("", stock.problem().orElse(""));
        return stock;
    }

    private static String card(double lightness) {
        return CARD.formatted(lightness);
    }

    private static double error(Stock stock, double x, double y, int rgb) {
        return DeltaE.ciede2000(Srgb.lab(rgb), stock.palette().get(stock.at(x, y, 0.05)));
    }

    /** The two colours as they are, to the rounding of eight bits under that light: CIEDE2000 0.5. */
    @Test
    void theGreyTakesTheCastAway() throws Exception {
        Stock stock = good(CROP + card(GREY_LIGHTNESS));
        // a check is 20 pixels, 2 mm; the crop begins with the first colour
        assertEquals(0, error(stock, 1, 1, SHELL), 0.5);
        assertEquals(0, error(stock, 3, 1, VEIN), 0.5);
        assertEquals(0, error(stock, 3, 3, SHELL), 0.5);
        Stock raw = good(CROP);
        assertTrue(error(raw, 3, 1, VEIN) > 4, "the light was hardly warm: " + error(raw, 3, 1, VEIN));
    }

    /** The exposure goes with the cast: said to be lighter, the grey makes all of it lighter by the same factor. */
    @Test
    void theGreySetsTheExposure() throws Exception {
        Stock darker = good(CROP + card(30));
        double factor = new Lab(30, 0, 0).toXyz().y() / new Lab(GREY_LIGHTNESS, 0, 0).toXyz().y();
        assertEquals(factor, darker.mean().toXyz().y() / good(CROP + card(GREY_LIGHTNESS)).mean().toXyz().y(), 0.02);
    }

    @Test
    void onlyTheCropIsThere() throws Exception {
        assertEquals(2, good(CROP).palette().size());
        Stock whole = good("");
        assertEquals(5, whole.palette().size());
        // the scale stays that of the whole photograph: 40 mm are 400 pixels
        assertEquals(0, error(good(CROP), 0.1, 0.1, cast(SHELL, CAST)), 0.1);
        assertEquals(0, error(whole, 12.1, 4.1, cast(SHELL, CAST)), 0.1);
        assertEquals(0, error(whole, 0.1, 0.1, cast(TABLE, CAST)), 0.1);
    }

    @Test
    void mmAreThoseOfTheScale() throws Exception {
        Stock inMm = good("<crop x=\"12\" y=\"4\" width=\"24\" height=\"20\" unit=\"mm\"/>"
                + "<grey x=\"2\" y=\"2\" width=\"6\" height=\"6\" lightness=\"" + GREY_LIGHTNESS + "\" unit=\"mm\"/>");
        Stock inPixels = good(CROP + card(GREY_LIGHTNESS));
        assertEquals(inPixels.palette(), inMm.palette());
        for (double x = -30; x < 30; x += 0.7) {
            assertEquals(inPixels.at(x, 0.3 * x, 0.05), inMm.at(x, 0.3 * x, 0.05));
        }
    }

    /** The mean of the pattern is the mean of its light, however the colours are gathered. */
    @Test
    void theMeanIsTheMeanOfTheLight() throws Exception {
        double shell = Srgb.lab(SHELL).toXyz().y();
        double vein = Srgb.lab(VEIN).toXyz().y();
        assertEquals((shell + vein) / 2, good(CROP + card(GREY_LIGHTNESS)).mean().toXyz().y(), 0.004);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "<crop x='300' y='40' width='200' height='100'/> | crop does not lie on it; correct the crop.",
        "<crop x='30' y='4' width='20' height='10' unit='mm'/> | crop does not lie on it; correct the crop.",
        "<grey x='390' y='20' width='60' height='60' lightness='50'/> | grey patch does not lie on it",
        "<grey x='20' y='20' width='60' height='60'/> | grey patch without a lightness; give it",
        "<grey x='20' y='20' width='0.1' height='60' lightness='50'/> | grey patch does not lie on it",
        "<grey x='20' y='250' width='60' height='40' lightness='20'/> | too dark at its grey patch"})
    void whatDoesNotLieOnThePhotographIsSaid(String inTheTexture, String said) throws Exception {
        Stock stock = stock(inTheTexture.replace('\'', '"'));
        String problem = stock.problem().orElse("no problem");
        assertTrue(problem.startsWith("The swatch picture shell.png ") && problem.contains(said)
                && problem.endsWith("."), problem);
        assertEquals(1, stock.palette().size());
    }

    /** Read once while nothing changes; anew when the file or the crop does. */
    @Test
    void aPhotographIsReadAnewWhenItChanges() throws Exception {
        SwatchShelf shelf = new SwatchShelf();
        Path file = folder.resolve("shell.png");
        Texture texture = material(CROP).getTexture();
        SwatchPattern first = shelf.read(file, texture);
        assertSame(first, shelf.read(file, texture));
        texture.getCrop().setX(140);
        assertNotSame(first, shelf.read(file, texture));
        texture.getCrop().setX(120);
        assertSame(first, shelf.read(file, texture));
        Files.setLastModifiedTime(file, FileTime.fromMillis(86_400_000));
        assertNotSame(first, shelf.read(file, texture));
        Files.delete(file);
        assertThrows(IOException.class, () -> shelf.read(file, texture));
    }

    @Test
    void anOverexposedGreyIsRefused() throws Exception {
        BufferedImage bright = new BufferedImage(100, 100, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 10_000; i++) {
            bright.setRGB(i % 100, i / 100, 0xfff8f0);
        }
        ImageIO.write(bright, "png", folder.resolve("shell.png").toFile());
        String problem = stock(card(90)).problem().orElse("no problem");
        assertTrue(problem.contains("overexposed at its grey patch"), problem);
    }
}
