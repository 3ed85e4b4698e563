/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.impl.ResourceImpl;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Texture;
import org.pollex.model.catalogue.TextureKind;

class StockTest {

    @TempDir
    private Path folder;

    private static Material material(TextureKind kind, int seed, String... colours) {
        Material material = CatalogueFactory.eINSTANCE.createMaterial();
        material.setId("stuff");
        material.setLab(LabColour.parse("50 0 0"));
        Texture texture = CatalogueFactory.eINSTANCE.createTexture();
        texture.setKind(kind);
        texture.setScale(3);
        texture.setSeed(seed);
        texture.setAmount(20);
        for (String colour : colours) {
            texture.getColours().add(LabColour.parse(colour));
        }
        material.setTexture(texture);
        return material;
    }

    private static short[] raster(Stock stock, double step, boolean mirrored) {
        int n = (int) (20 / step);
        return stock.raster(-10, -10, step, n, n, mirrored);
    }

    @ParameterizedTest
    @EnumSource(names = {"FLAT", "SWATCH"}, mode = Mode.EXCLUDE)
    void theSeedDecidesAndTheBackIsTheFrontMirrored(TextureKind kind) {
        Stock stock = Stock.of(material(kind, 7, "20 0 0", "60 30 10", "80 0 40"));
        short[] front = raster(stock, 0.1, false);
        assertArrayEquals(front, raster(Stock.of(material(kind, 7, "20 0 0", "60 30 10", "80 0 40")), 0.1, false));
        assertFalse(Arrays.equals(front, raster(Stock.of(material(kind, 8, "20 0 0", "60 30 10", "80 0 40")), 0.1,
                false)));
        short[] back = raster(stock, 0.1, true);
        for (int y = 0; y < 200; y += 13) {
            for (int x = 0; x < 200; x += 7) {
                assertEquals(front[y * 200 + x], back[y * 200 + 199 - x]);
            }
        }
    }

    /** Coarse pictures show the same surface: the mean of its light does not depend on the step. */
    @ParameterizedTest
    @EnumSource(names = {"FLAT", "SWATCH"}, mode = Mode.EXCLUDE)
    void theMeanDoesNotDependOnTheStep(TextureKind kind) {
        Stock stock = Stock.of(material(kind, 3, "25 0 0", "55 30 10", "80 0 40"));
        assertTrue(DeltaE.ciede2000(mean(stock, 0.04), mean(stock, 0.25)) < 1.5);
    }

    private static Lab mean(Stock stock, double step) {
        double l = 0;
        double a = 0;
        double b = 0;
        short[] numbers = raster(stock, step, false);
        for (short number : numbers) {
            Lab each = stock.palette().get(number & 0xffff);
            l += each.l() / numbers.length;
            a += each.a() / numbers.length;
            b += each.b() / numbers.length;
        }
        return new Lab(l, a, b);
    }

    @ParameterizedTest
    @EnumSource(names = {"FLAT", "SWATCH"}, mode = Mode.EXCLUDE)
    void withoutColoursItIsTheMaterialLighterAndDarker(TextureKind kind) {
        Stock stock = Stock.of(material(kind, 5));
        List<Lab> palette = stock.palette();
        assertTrue(palette.stream().allMatch(each -> each.l() > 29.9 && each.l() < 70.1));
        assertEquals(2, palette.stream().mapToDouble(Lab::l).mapToObj(l -> l < 31 ? 0 : l > 69 ? 1 : 2)
                .filter(which -> which < 2).distinct().count());
    }

    @Test
    void aPlainMaterialHasOneColour() {
        Stock stock = Stock.of(material(TextureKind.FLAT, 0));
        assertEquals(List.of(new Lab(50, 0, 0)), stock.palette());
        assertTrue(stock.problem().isEmpty());
    }

    private Material swatch(String picture) {
        Material material = material(TextureKind.SWATCH, 0);
        material.getTexture().setPicture(picture);
        ResourceImpl resource = new ResourceImpl(URI.createFileURI(folder.resolve("own.catalogue").toString()));
        resource.getContents().add(material);
        return material;
    }

    @Test
    void aSwatchIsLaidOutAtItsScaleAndMirroredAtItsEdges() throws Exception {
        BufferedImage image = new BufferedImage(30, 10, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 30; x++) {
            for (int y = 0; y < 10; y++) {
                image.setRGB(x, y, x < 10 ? 0xc02020 : 0x204080);
            }
        }
        ImageIO.write(image, "png", folder.resolve("photo.png").toFile());
        Stock stock = Stock.of(swatch("photo.png"));
        assertTrue(stock.problem().isEmpty());
        Lab red = Srgb.lab(0xc02020);
        for (double x : new double[] {0.5, -0.5, 5.5, 6.5}) {
            assertTrue(DeltaE.ciede2000(red, stock.palette().get(stock.at(x, 0.2, 0.05))) < 3, "at " + x);
        }
        for (double x : new double[] {1.5, 2.9, -1.5, 4.5}) {
            assertTrue(DeltaE.ciede2000(red, stock.palette().get(stock.at(x, 0.2, 0.05))) > 20, "at " + x);
        }
    }

    @Test
    void aSwatchThatCannotBeReadLeavesThePlainColourAndSaysWhy() throws Exception {
        Files.writeString(folder.resolve("text.png"), "no picture");
        for (String[] each : new String[][] {{"none.png", "missing"}, {"text.png", "no picture"},
            {"../other.png", "outside"}}) {
            Stock stock = Stock.of(swatch(each[0]));
            assertEquals(1, stock.palette().size());
            String problem = stock.problem().orElseThrow();
            assertTrue(problem.contains(each[1]) && problem.contains("other.png".equals(each[0]) ? "../" : each[0]
                    .replace("../", "")), problem);
        }
        assertTrue(Stock.of(material(TextureKind.SWATCH, 0)).problem().isPresent());
    }

    /** Shades run from dark to light round the mean, and the larger what is seen past them, the nearer to it. */
    @ParameterizedTest
    @EnumSource(names = {"FLAT", "SWATCH"}, mode = Mode.EXCLUDE)
    void shadesSpreadRoundTheMeanAndLessInTheLarge(TextureKind kind) {
        Stock stock = Stock.of(material(kind, 3, "25 0 0", "55 0 0", "80 0 0"));
        List<Lab> fine = stock.shades(5, 0.2);
        List<Lab> coarse = stock.shades(5, 6);
        assertEquals(5, fine.size());
        for (int i = 1; i < 5; i++) {
            assertTrue(fine.get(i - 1).l() <= fine.get(i).l());
        }
        assertTrue(fine.get(0).l() <= stock.mean().l() && stock.mean().l() <= fine.get(4).l() + 1e-9);
        assertTrue(coarse.get(4).l() - coarse.get(0).l() < fine.get(4).l() - fine.get(0).l());
        // One square as large as the surface is its mean.
        assertEquals(0, DeltaE.ciede2000(stock.mean(), stock.shades(1, 40).get(0)), 1e-9);
        assertEquals(stock.shades(3, 1.3), stock.shades(3, 1.3));
    }

    @Test
    void aPlainSurfaceHasOneShade() {
        assertEquals(1, Stock.of(material(TextureKind.FLAT, 1)).shades(5, 1.3).size());
    }
}
