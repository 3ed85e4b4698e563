/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.output.SampleDesign;

class MaterialPictureTest {

    private static final int DPI = 254;

    private static int at(BufferedImage image, double x, double y) {
        return image.getRGB((int) Math.round(x * DPI / 25.4), (int) Math.round(y * DPI / 25.4)) & 0xffffff;
    }

    @Test
    void hasTheSizeOfBothFacesAtItsResolution() {
        BufferedImage image = MaterialPicture.of(SampleDesign.twoSided().printed(), PictureOptions.of(DPI));
        assertEquals((26 * 2 + 4 * 3) * 10, image.getWidth(), 1);
        assertEquals((31 + 2 * 4) * 10, image.getHeight(), 1);
    }

    @Test
    void showsMaterialAndInkInTheirPredictedColours() {
        BufferedImage image = MaterialPicture.of(SampleDesign.twoSided().printed(), PictureOptions.of(DPI));
        double x = 4 + 13;
        double y = 4 + 15.5;
        // The stock is nearly the black card of the drawdown, so the ink shows nearly its colour over black.
        near(SampleDesign.RED_OVER_BLACK, at(image, x, y - 3));
        near(SampleDesign.WHITE_OVER_BLACK, at(image, x, y - 7));
        assertEquals(SampleDesign.rgb("18 0 0"), at(image, x, y + 8));
        assertEquals(PictureOptions.NEUTRAL, at(image, 0.5, 0.5));
    }

    @Test
    void showsTheBackOnTheRightWithItsOwnPrint() {
        BufferedImage image = MaterialPicture.of(SampleDesign.twoSided().printed(), PictureOptions.of(DPI));
        double x = 4 + 26 + 4 + 13;
        near(SampleDesign.RED_OVER_BLACK, at(image, x, 4 + 15.5 + 6));
        near(SampleDesign.WHITE_OVER_BLACK, at(image, x, 4 + 15.5 - 4));
    }

    /** A square on the right of the back lies on the left of the front, under the front's own print. */
    @Test
    void showsTheOtherSideThroughClearStockTurnedRound() {
        SampleDesign design = new SampleDesign().material("Clear", "92 0 1")
                .ink("black", "Black", "17 0 1", "14 0 0")
                .front("signal-red", 0xc02020, SampleDesign.box(-1.5, -9, 3, 3))
                .back("black", 0, SampleDesign.box(3, -2, 4, 4));
        int bare = at(MaterialPicture.of(design.printed(), PictureOptions.of(DPI)), 4 + 13 - 5, 4 + 15.5);
        BufferedImage clear = MaterialPicture.of(design.clear(0.9).printed(), PictureOptions.of(DPI));
        double l = Srgb.lab(at(clear, 4 + 13 - 5, 4 + 15.5)).l();
        assertTrue(Srgb.lab(bare).l() > 90, "bare stock of an opaque material at L* " + Srgb.lab(bare).l());
        assertTrue(l > 20 && l < 50, "the back's black through clear stock at L* " + l);
        assertEquals(bare, at(clear, 4 + 13 + 5, 4 + 15.5));
        double back = 4 + 26 + 4 + 13;
        assertTrue(Srgb.lab(at(clear, back + 5, 4 + 15.5)).l() < 20);
        assertTrue(Srgb.lab(at(clear, back, 4 + 15.5 - 7.5)).a() > 30, "the front's red through the stock");
    }

    @Test
    void leavesOutWhatFallsOffTheItem() {
        SampleDesign far = new SampleDesign().front("white", 0, SampleDesign.box(-40, -40, 80, 80));
        BufferedImage image = MaterialPicture.of(far.printed(), PictureOptions.of(DPI));
        assertEquals(PictureOptions.NEUTRAL, at(image, 0.5, 0.5));
        near(SampleDesign.WHITE_OVER_BLACK, at(image, 17, 19.5));
    }

    @Test
    void mixesProcessColoursOverWhiteAsTheArtShowsThem() {
        SampleDesign design = new SampleDesign().front("process", 0x3366cc, SampleDesign.disc(0, 0, 5));
        design.method().setFullColour(true);
        design.method().setWhiteUnder(true);
        near(Srgb.lab(0x3366cc), at(MaterialPicture.of(design.printed(), PictureOptions.of(DPI)), 17, 19.5));
        design.method().setWhiteUnder(false);
        int dark = at(MaterialPicture.of(design.printed(), PictureOptions.of(DPI)), 17, 19.5);
        assertTrue((dark & 255) < 0x60, Integer.toHexString(dark));
    }

    /** The white ends 0.1 mm inside the colour: there it shows on the bare black, dark; white alone has no rim. */
    @Test
    void showsColourWithoutWhiteInItsRim() {
        SampleDesign design = new SampleDesign().front("process", 0x3366cc, SampleDesign.box(-5, -5, 10, 5))
                .front("process", 0xffffff, SampleDesign.box(-5, 0, 10, 5));
        design.method().setFullColour(true);
        design.method().setWhiteUnder(true);
        design.method().setChoke(0.1);
        BufferedImage image = MaterialPicture.of(design.printed(), PictureOptions.of(5 * DPI));
        double x = 5 * (4 + 13);
        double y = 5 * (4 + 15.5);
        near(Srgb.lab(0x3366cc), at(image, x - 5 * 4.8, y - 5 * 2));
        near(Srgb.lab(0x3366cc), at(image, x, y - 5 * 0.05));
        double rim = Srgb.lab(at(image, x - 5 * 4.95, y - 5 * 2)).l();
        assertTrue(rim < 18, "blue on bare black is no lighter than the black: " + rim);
        double white = Srgb.lab(at(image, x - 5 * 4.95, y + 5 * 2)).l();
        assertTrue(white > 80, "white alone reaches its edge: " + white);
    }

    private static void near(Lab expected, int rgb) {
        double deltaE = DeltaE.ciede2000(expected, Srgb.lab(rgb));
        assertTrue(deltaE < 1, "CIEDE2000 " + deltaE + " for " + Integer.toHexString(rgb));
    }

    @Test
    void smoothsEdges() {
        SampleDesign design = new SampleDesign().front("white", 0, SampleDesign.box(-5.05, -5.05, 10.1, 10.1));
        BufferedImage image = MaterialPicture.of(design.printed(), PictureOptions.of(DPI));
        int between = at(image, 4 + 13 - 5.1, 4 + 15.5) & 255;
        assertTrue(between > 0x30 && between < 0xd0, Integer.toHexString(between));
    }

    @Test
    void showsZonesWithHatchAndLegend() {
        BufferedImage plain = MaterialPicture.of(SampleDesign.twoSided().printed(), PictureOptions.of(DPI));
        BufferedImage zones = MaterialPicture.of(SampleDesign.twoSided().printed(),
                PictureOptions.of(DPI).withZones(true));
        assertEquals(plain.getHeight() + 60, zones.getHeight(), 1);
        int hatched = 0;
        for (int y = plain.getHeight() - 150; y < plain.getHeight() - 60; y++) {
            if (plain.getRGB(170, y) != zones.getRGB(170, y)) {
                hatched++;
            }
        }
        assertTrue(hatched > 5, "hatch lines across the tip: " + hatched);
        assertNotEquals(PictureOptions.NEUTRAL, at(zones, 4.1, plain.getHeight() / 10.0));
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void isTheSameEachTime(boolean zones) {
        PictureOptions options = PictureOptions.of(DPI).withZones(zones);
        assertArrayEquals(PngFile.bytes(MaterialPicture.of(SampleDesign.twoSided().printed(), options), DPI),
                PngFile.bytes(MaterialPicture.of(SampleDesign.twoSided().printed(), options), DPI));
    }

    @ParameterizedTest
    @CsvSource({"72,2835", "254,10000", "600,23622"})
    void statesItsResolutionInTheFile(int dpi, String perMetre) throws Exception {
        byte[] png = PngFile.bytes(MaterialPicture.of(new SampleDesign().printed(), PictureOptions.of(dpi)), dpi);
        ImageReader reader = ImageIO.getImageReadersByFormatName("png").next();
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(png))) {
            reader.setInput(in);
            IIOMetadataNode root = (IIOMetadataNode) reader.getImageMetadata(0).getAsTree("javax_imageio_png_1.0");
            IIOMetadataNode size = (IIOMetadataNode) root.getElementsByTagName("pHYs").item(0);
            assertEquals(perMetre, size.getAttribute("pixelsPerUnitXAxis"));
            assertEquals(perMetre, size.getAttribute("pixelsPerUnitYAxis"));
            assertEquals("meter", size.getAttribute("unitSpecifier"));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 35, 2401})
    void refusesResolutionsOutOfRange(int dpi) {
        assertThrows(IllegalArgumentException.class, () -> PictureOptions.of(dpi));
    }

    @Test
    void refusesPicturesThatDoNotFitIntoMemory() {
        SampleDesign large = new SampleDesign().size(120, 140);
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
                () -> MaterialPicture.of(large.printed(), PictureOptions.of(2400)));
        assertTrue(refused.getMessage().contains("fewer dots an inch"), refused.getMessage());
    }
}
