/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;
import org.pollex.artwork.svg.SvgReader;
import org.pollex.artwork.svg.reader.Reads;

/** Sizes of pages: 1 px = 25.4 / 96 mm (CSS Values and Units 4). */
class PageTest {

    private static String root(String attributes) {
        return "<svg xmlns='http://www.w3.org/2000/svg' " + attributes + "><rect width='8' height='4'/></svg>";
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "width='30mm' height='20mm'                        | 30        | 20        | true",
        "width='3cm' height='72pt'                         | 30        | 25.4      | true",
        "width='96px' height='48'                          | 25.4      | 12.7      | false",
        "width='30mm' height='48px' viewBox='0 0 8 4'      | 30        | 12.7      | false",
        "viewBox='0 0 96 48'                               | 25.4      | 12.7      | false",
        "width='100%' height='100%' viewBox='0 0 96 48'    | 25.4      | 12.7      | false",
        "width='40mm' viewBox='0 0 96 48'                  | 40        | 20        | true",
        "height='40mm' viewBox='0 0 96 48'                 | 80        | 40        | true",
        "width='40mm' height='100%' viewBox='0 0 96 48'    | 40        | 20        | true",
        "width='96' viewBox='0 0 8 4'                      | 25.4      | 12.7      | false",
        "style='width:30mm;height:20mm'                    | 30        | 20        | true",
        "width='1m' height='1m' viewBox='0 0 96 96'        | 25.4      | 25.4      | false",
        "width='1000mm' height='1000mm' viewBox='0 0 9 9'  | 1000      | 1000      | true",
        "width='.001mm' height='.001mm' viewBox='0 0 9 9'  | 0.001     | 0.001     | true"})
    void sizes(String attributes, double width, double height, boolean sized) {
        Art art = Reads.file(root(attributes));
        assertEquals(width, art.width(), width * 1e-12);
        assertEquals(height, art.height(), height * 1e-12);
        assertEquals(sized, art.sized());
    }

    @Test
    void theViewBoxFillsThePage() {
        Art art = Reads.file(root("width='40mm' height='40mm' viewBox='0 0 16 8'"));
        assertEquals(10, Reads.box(art.regions().get(0)).getMinY(), 1e-12);
        assertEquals(20, Reads.box(art.regions().get(0)).getMaxY(), 1e-12);
        Art stretched = Reads.file(root("width='40mm' height='40mm' viewBox='0 0 16 8' preserveAspectRatio='none'"));
        assertEquals(20, Reads.box(stretched.regions().get(0)).getMaxY(), 1e-12);
        assertEquals(20, Reads.box(stretched.regions().get(0)).getMaxX(), 1e-12);
    }

    @Test
    void withoutAnySizeThePageIsWhatIsPainted() {
        Art art = Reads.file("<svg xmlns='http://www.w3.org/2000/svg'><rect x='96' y='-96' width='192' height='96'/>"
                + "</svg>");
        assertEquals(50.8, art.width(), 1e-9);
        assertEquals(25.4, art.height(), 1e-9);
        assertEquals(0, Reads.box(art.regions().get(0)).getX(), 1e-9);
        assertEquals(0, Reads.box(art.regions().get(0)).getY(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "width='0' height='5mm'                           | a width or height of 0",
        "width='1e9mm' height='5mm'                       | more than 100 m",
        "width='1e-9mm' height='5mm'                      | less than 0.1 um",
        "width='5mm' height='1e9mm' viewBox='0 0 1 1'     | more than 100 m"})
    void sizesBeyondReasonAreRefused(String attributes, String reason) {
        String message = assertThrows(ArtException.class, () -> new SvgReader().read(new ArtSource("art.svg",
                root(attributes).getBytes(StandardCharsets.UTF_8)), ReadLimits.usual())).getMessage();
        assertTrue(message.startsWith("art.svg: ") && message.contains(reason) && message.endsWith("real size."),
                message);
    }

    @Test
    void nothingToMeasureIsRefused() {
        String message = assertThrows(ArtException.class, () -> new SvgReader().read(new ArtSource("art.svg",
                "<svg xmlns='http://www.w3.org/2000/svg'/>".getBytes(StandardCharsets.UTF_8)), ReadLimits.usual()))
                .getMessage();
        assertTrue(message.contains("states no size"), message);
    }

    @Test
    void whatLiesOutsideThePageIsCut() {
        Art art = Reads.page("<rect x='200' y='0' width='5' height='5'/><rect id='half' x='90' y='90' width='20'"
                + " height='20'/><rect x='10' y='10' width='5' height='5'/>");
        assertEquals(2, art.regions().size());
        assertEquals("half", art.regions().get(0).id());
        assertEquals(1, art.regions().get(0).clips().size());
        assertEquals(new Rectangle2D.Double(0, 0, 100, 100), art.regions().get(0).clips().get(0).bounds());
        assertTrue(art.regions().get(1).clips().isEmpty());
    }
}
