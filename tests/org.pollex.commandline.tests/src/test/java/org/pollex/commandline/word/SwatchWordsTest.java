/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Srgb;
import org.pollex.commandline.Studio;

/** A stock of the studio's own, known by a photograph beside its catalogue: what is seen of it and said about it. */
class SwatchWordsTest {

    private static final int SHELL = 0x8a5a3c;
    private static final int GREY = 0x777777;

    @TempDir
    private Path folder;
    private Studio studio;

    /** The left half is a grey card, the right half the stock; the light takes half of the blue. */
    @BeforeEach
    void open() throws IOException {
        studio = new Studio(folder);
        BufferedImage photo = new BufferedImage(200, 100, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 20_000; i++) {
            int rgb = i % 200 < 100 ? GREY : SHELL;
            int blue = (int) Math.round(255 * Srgb.encode(Srgb.decode((rgb & 255) / 255.0) / 2));
            photo.setRGB(i % 200, i / 200, rgb & 0xffff00 | blue);
        }
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(photo, "png", png);
        studio.write("shell.png", png.toByteArray());
        studio.write("own.catalogue", """
                <?xml version="1.0" encoding="UTF-8"?>
                <catalogue:Catalogue xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI"
                    xmlns:catalogue="http://pollex.org/model/catalogue" format="1" name="Ours">
                  <materials id="shell" name="shell" lab="43 17 24">
                    <texture kind="swatch" picture="shell.png" scale="40">
                      <crop x="104" y="4" width="92" height="92"/>
                      <grey x="1" y="1" width="18" height="18" unit="mm" lightness="%s"/>
                    </texture>
                  </materials>
                </catalogue:Catalogue>
                """.formatted(Srgb.lab(GREY).l()));
        studio.write("square.svg", Studio.square());
        assertEquals(0, studio.call("new", "a.design", "--product", "standard-pick", "--material", "shell",
                "--method", "pad-one-colour", "--ink", "navy", "--front", "square.svg").code());
    }

    @Test
    void thePictureShowsTheStockAsItIs() throws IOException {
        assertEquals(0, studio.call("picture", "a.design", "--png", "a.png", "--dpi", "254").code());
        BufferedImage picture = ImageIO.read(new ByteArrayInputStream(studio.bytes("a.png")));
        int bare = picture.getRGB(40 + 260 + 40 + 130, 40 + 155) & 0xffffff;
        double error = DeltaE.ciede2000(Srgb.lab(SHELL), Srgb.lab(bare));
        assertTrue(error < 1, Srgb.format(bare) + " is " + error + " from the stock");
    }

    /** Half of the blue is gone from the picture when it is not balanced, and the catalogue has the colour with it. */
    @Test
    void aPictureOfAnotherColourThanItsMaterialIsSaid() {
        assertFalse(studio.call("check", "a.design").out().contains("mean colour"));
        studio.write("own.catalogue", studio.text("own.catalogue").replaceAll("<grey .*/>", ""));
        String said = studio.call("check", "a.design").out();
        assertEquals(1, said.split("The picture of shell has the mean colour", -1).length - 1, said);
    }

    @Test
    void theListSaysWhatOfThePictureIsTaken() {
        JsonArray materials = JsonParser.parseString(studio.call("list", "materials", "--json").out())
                .getAsJsonArray();
        JsonObject texture = materials.asList().stream().map(JsonElement::getAsJsonObject)
                .filter(each -> each.get("id").getAsString().equals("shell")).findFirst().orElseThrow()
                .getAsJsonObject("texture");
        assertEquals("shell.png", texture.get("picture").getAsString());
        assertEquals(104, texture.getAsJsonObject("crop").get("x").getAsDouble());
        assertEquals("px", texture.getAsJsonObject("crop").get("unit").getAsString());
        assertEquals("mm", texture.getAsJsonObject("grey").get("unit").getAsString());
        assertEquals(Srgb.lab(GREY).l(), texture.getAsJsonObject("grey").get("lightness").getAsDouble(), 0.01);
    }

    @Test
    void aLostPhotographIsSaidOnce() throws IOException {
        assertEquals(0, studio.call("check", "a.design").out().split("swatch picture", -1).length - 1);
        Files.delete(folder.resolve("shell.png"));
        String said = studio.call("check", "a.design").out();
        assertEquals(1, said.split("swatch picture shell.png is missing", -1).length - 1, said);
    }
}
