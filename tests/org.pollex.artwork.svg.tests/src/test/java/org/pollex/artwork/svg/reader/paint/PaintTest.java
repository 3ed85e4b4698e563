/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtNotice;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.ArtRegion;
import org.pollex.artwork.svg.reader.Reads;

/** Paints (SVG 2, chapters 13 and 14): gradients on the page, patterns, pictures, and what is named instead. */
class PaintTest {

    private static final String STOPS = "<stop stop-color='red'/><stop offset='1' stop-color='blue'/>";

    private static ArtPaint.Gradient gradient(String inside) {
        Art art = Reads.page(inside);
        return assertInstanceOf(ArtPaint.Gradient.class, art.regions().get(0).paint());
    }

    private static void assertAxis(List<Double> axis, double... expected) {
        for (int i = 0; i < 4; i++) {
            assertEquals(expected[i], axis.get(i), 1e-9, axis.toString());
        }
    }

    @Test
    void linearGradientsKeepTheirAxis() {
        assertAxis(gradient("<linearGradient id='g'>" + STOPS + "</linearGradient><rect x='10' y='20' width='50'"
                + " height='30' fill='url(#g)'/>").axis(), 10, 20, 60, 20);
        assertAxis(gradient("<linearGradient id='g' gradientUnits='userSpaceOnUse' x1='5' x2='25' y1='1'"
                + " y2='1'>" + STOPS
                + "</linearGradient><g transform='translate(1 2)scale(2)'><rect width='9' height='9' fill='url(#g)'/>"
                + "</g>").axis(), 11, 4, 51, 4);
    }

    /** Colours run along the lines that the transform makes of the gradient's own: both ends are checked. */
    @Test
    void skewedLinearGradientsAreExact() {
        ArtPaint.Gradient g = gradient("<linearGradient id='g' gradientUnits='userSpaceOnUse' x1='0' x2='10'"
                + " gradientTransform='skewX(30)'>" + STOPS + "</linearGradient><rect width='50' height='50'"
                + " fill='url(#g)'/>");
        double shear = Math.tan(Math.toRadians(30));
        for (double[] uv : new double[][] {{0, 0}, {0, 7}, {10, 0}, {10, -3}, {5, 2}}) {
            double x = uv[0] + shear * uv[1];
            double dx = g.axis().get(2) - g.axis().get(0);
            double dy = g.axis().get(3) - g.axis().get(1);
            double t = ((x - g.axis().get(0)) * dx + (uv[1] - g.axis().get(1)) * dy) / (dx * dx + dy * dy);
            assertEquals(uv[0] / 10, t, 1e-9);
        }
    }

    @Test
    void radialGradientsHaveCentreAndRadius() {
        ArtPaint.Gradient g = gradient("<radialGradient id='g'>" + STOPS + "</radialGradient><rect x='10' y='20'"
                + " width='40' height='40' fill='url(#g)'/>");
        assertTrue(g.radial());
        assertAxis(g.axis(), 30, 40, 20, 0);
        Art oval = Reads.page("<radialGradient id='g'>" + STOPS + "</radialGradient><rect id='r' width='40' height='20'"
                + " fill='url(#g)'/>");
        assertTrue(Reads.names(oval, ArtNotice.Kind.UNSUPPORTED, "radialGradient", "r"));
        Art focus = Reads.page("<radialGradient id='g' fx='.3'>" + STOPS + "</radialGradient><rect id='r' width='40'"
                + " height='40' fill='url(#g)'/>");
        assertTrue(Reads.names(focus, ArtNotice.Kind.UNSUPPORTED, "radialGradient fx fy", "r"));
    }

    @Test
    void stopsInheritAndSpread() {
        ArtPaint.Gradient g = gradient("<linearGradient id='s'>" + STOPS + "</linearGradient><linearGradient id='g'"
                + " href='#s' x2='.25' spreadMethod='reflect'/><rect width='80' height='9' fill='url(#g)'/>");
        assertAxis(g.axis(), 0, 0, 80, 0);
        assertEquals(List.of(0.0, 0.25, 0.25, 0.5, 0.5, 0.75, 0.75, 1.0),
                g.stops().stream().map(ArtPaint.Stop::offset).toList());
        assertEquals(List.of(0xff0000, 0x0000ff, 0x0000ff, 0xff0000, 0xff0000, 0x0000ff, 0x0000ff, 0xff0000),
                g.stops().stream().map(ArtPaint.Stop::rgb).toList());
        assertEquals(0x800080, g.rgb());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "<linearGradient id='g'><stop stop-color='red'/></linearGradient>                     | ff0000",
        "<linearGradient id='g'><stop stop-color='red'/><stop stop-color='red'/></linearGradient> | ff0000",
        "<linearGradient id='g' x1='1' x2='1'><stop stop-color='red'/><stop stop-color='lime'/></linearGradient>"
                + " |00ff00",
        "<linearGradient id='g'/>                                                             | ''",
        "<pattern id='g'/>                                                                    | ''",
        "<g id='none'/>                                                                       | ''"})
    void gradientsThatAreNone(String server, String colour) {
        Art art = Reads.page(server + "<rect width='9' height='9' fill='url(#g)'/>");
        assertEquals(colour.isBlank() ? List.of() : List.of(colour.strip()), Reads.colours(art));
    }

    @Test
    void otherwisesAndContexts() {
        assertEquals(List.of("00ff00"), Reads.colours(Reads.page("<rect width='9' height='9' fill='url(#g) lime'/>")));
        assertEquals(List.of("ff0000", "ff0000", "0000ff"), Reads.colours(Reads.page(
                "<marker id='m'><path d='M0 0h1v1z' fill='context-fill' stroke='context-stroke'/></marker>"
                + "<path d='M9 9h9v9' fill='red' stroke='none' marker-end='url(#m)'/>"
                + "<rect width='3' height='3' fill='blue'/>")));
    }

    @Test
    void opacityMultiplies() {
        Art art = Reads.page("<g opacity='.5'><rect width='9' height='9' fill='rgba(255,0,0,.5)'"
                + " fill-opacity='.5'/></g>");
        assertEquals(0.125, art.regions().get(0).paint().opacity(), 1e-12);
        assertEquals(0, Reads.page("<rect width='9' height='9' fill='transparent'/>").regions().size());
    }

    @Test
    void patternsAreTheirShapes() {
        Art art = Reads.page("<pattern id='p' width='10' height='10' patternUnits='userSpaceOnUse'><rect width='5'"
                + " height='5' fill='red'/></pattern><rect id='r' x='20' y='20' width='20' height='20'"
                + " fill='url(#p)'/>");
        assertEquals(4, art.regions().size());
        assertEquals(List.of("r/p/rect[1]"), art.regions().stream().map(ArtRegion::id).map(i -> i.replace(
                "pattern[1]", "p")).distinct().toList());
        assertEquals(20, Reads.box(art.regions().get(0)).getMinX(), 1e-9);
        assertEquals(35, Reads.box(art.regions().get(3)).getMaxX(), 1e-9);
        assertTrue(Reads.refusal("<pattern id='p' width='1e-4' height='1e-4'><path d='M0 0h1v1z'/></pattern>"
                + "<rect width='9' height='9' fill='url(#p)'/>").contains("tiles"));
    }

    private static String png(int width, int height, int argb) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        for (int i = 0; i < width * height; i++) {
            image.setRGB(i % width, i / width, argb);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return "data:image/png;base64," + Base64.getEncoder().encodeToString(out.toByteArray());
    }

    @Test
    void picturesAreKept() throws IOException {
        Art art = Reads.page("<image x='10' y='20' width='40' height='40' href='" + png(4, 2, 0xff336699) + "'/>");
        ArtPaint.Raster raster = assertInstanceOf(ArtPaint.Raster.class, art.regions().get(0).paint());
        assertEquals(4, raster.width());
        assertEquals(0x336699, raster.rgb());
        for (int i = 0; i < 6; i++) {
            assertEquals(List.of(10.0, 0.0, 0.0, 10.0, 10.0, 30.0).get(i), raster.matrix().get(i), 1e-9);
        }
        assertEquals(20, Reads.box(art.regions().get(0)).getHeight(), 1e-9);
    }

    @Test
    void picturesThatAreNoneAreNamed() throws IOException {
        for (String href : List.of("data:image/png;base64,AAAA", "data:image/gif;base64,AAAA", "data:image/png,xyz",
                "data:,")) {
            Art art = Reads.page("<image id='i' width='9' height='9' href='" + href + "'/>");
            assertEquals(1, art.notices().size(), href);
            assertEquals(ArtNotice.Kind.UNSUPPORTED, art.notices().get(0).kind());
        }
        assertTrue(Reads.names(Reads.page("<image id='i' width='9' height='9' href='photo.png'/>"),
                ArtNotice.Kind.REFUSED, "image href", "i"));
        assertTrue(Reads.refusal("<image width='9' height='9' href='" + png(6000, 5000, 0) + "'/>")
                .contains("more than 25000000 pixels"));
    }
}
