/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pollex.commandline.Studio;

/** The words that show a design: picture and proof. */
class ShowWordsTest {

    @TempDir
    private Path folder;
    private Studio studio;

    @BeforeEach
    void open() {
        studio = new Studio(folder);
        studio.write("square.svg", Studio.square());
        studio.write("hairline.svg", Studio.hairline());
        studio.make("a.design", "--front", "square.svg");
        studio.make("thin.design", "--front", "hairline.svg");
    }

    private BufferedImage picture(String name) throws Exception {
        return ImageIO.read(new ByteArrayInputStream(studio.bytes(name)));
    }

    private String text(String name) throws Exception {
        try (PDDocument document = Loader.loadPDF(studio.bytes(name))) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void drawsBothSidesAtTheResolutionAskedFor() throws Exception {
        assertEquals(0, studio.call("picture", "a.design", "--png", "a.png", "--dpi", "254").code());
        BufferedImage picture = picture("a.png");
        assertEquals(640, picture.getWidth(), 1);
        int ink = picture.getRGB(40 + 130, 40 + 155) & 0xffffff;
        int bare = picture.getRGB(40 + 260 + 40 + 130, 40 + 155) & 0xffffff;
        assertTrue((ink & 255) > (ink >> 16) + 30, "navy: " + Integer.toHexString(ink));
        assertTrue((bare >> 16) > 0xd0, "white: " + Integer.toHexString(bare));
    }

    @Test
    void showsZonesWhenAsked() throws Exception {
        studio.call("picture", "a.design", "--png", "a.png", "--dpi", "200");
        studio.call("picture", "a.design", "--png", "z.png", "--dpi", "200", "--zones");
        assertTrue(picture("z.png").getHeight() > picture("a.png").getHeight());
    }

    @ParameterizedTest
    @CsvSource({"picture, --png, --dpi, 35", "picture, --png, --dpi, 5000", "proof, --pdf, --page, A9"})
    void refusesValuesOutOfRange(String word, String to, String option, String value) {
        Studio.Answer answer = studio.call(word, "a.design", to, "out", option, value);
        assertEquals(2, answer.code());
        assertEquals(1, answer.errors().size());
        assertFalse(studio.files().contains("out"));
    }

    @Test
    void provesADesignWithItsFindings() throws Exception {
        assertEquals(0, studio.call("proof", "thin.design", "--pdf", "thin.pdf").code());
        String text = text("thin.pdf");
        assertTrue(text.contains("thin") && text.contains("25 November 2026") && text.contains("First proof"), text);
        assertTrue(text.contains("Must change, front"), text);
        assertTrue(text.contains("hairline.svg"), text);
    }

    @Test
    void takesClientAndRevisionFromTheJob() throws Exception {
        studio.write("tour.job", """
                <?xml version="1.0" encoding="UTF-8"?>
                <job:Job xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" xmlns:job="http://pollex.org/model/job"
                    format="1" name="Spring tour" client="The Harbour Brass" quantity="300">
                  <designs path="a.design" quantity="120"/>
                  <revisions number="3" who="us"/>
                </job:Job>
                """);
        assertEquals(0, studio.call("proof", "a.design", "--pdf", "a.pdf", "--date", "2027-01-05").code());
        String text = text("a.pdf");
        for (String part : new String[] {"The Harbour Brass", "Spring tour", "Revision 3", "120 pieces",
            "5 January 2027"}) {
            assertTrue(text.contains(part), part + " in: " + text);
        }
    }

    @Test
    void givesTheSameFilesEachTime() {
        for (String run : new String[] {"1", "2"}) {
            studio.call("picture", "a.design", "--png", run + ".png", "--zones");
            studio.call("proof", "thin.design", "--pdf", run + ".pdf");
        }
        assertArrayEquals(studio.bytes("1.png"), studio.bytes("2.png"));
        assertArrayEquals(studio.bytes("1.pdf"), studio.bytes("2.pdf"));
    }
}
