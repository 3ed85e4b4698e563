/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtNotice;
import org.pollex.artwork.svg.reader.Reads;

/** Which colour wins: CSS Cascade 4, Selectors 4, CSS Custom Properties 1, SVG 2 chapter 6. */
class StyleTest {

    private static final String SHAPE = "<g id='outer' class='group' fill='#00f'><rect id='a' class='one two' width='9'"
            + " height='9' data-kind='sea-blue'/></g>";

    @ParameterizedTest
    @CsvSource(delimiterString = " ; ", quoteCharacter = '~', value = {
        "~~ ; 0000ff",
        "rect{fill:red} ; ff0000",
        "*{fill:red} ; ff0000",
        ".one{fill:red} rect{fill:lime} ; ff0000",
        "#a{fill:red} .one.two{fill:lime} ; ff0000",
        ".one{fill:red} .two{fill:lime} ; 00ff00",
        ".one{fill:red!important} #a{fill:lime} ; ff0000",
        "g rect{fill:red} ; ff0000",
        "g>rect{fill:red} ; ff0000",
        "svg>rect{fill:red} ; 0000ff",
        "#outer .two{fill:red} #a{fill:lime} ; ff0000",
        "[data-kind]{fill:red} ; ff0000",
        "[data-kind='sea-blue']{fill:red} ; ff0000",
        "[data-kind|=sea]{fill:red} ; ff0000",
        "[data-kind^=sea]{fill:red} ; ff0000",
        "[data-kind$=red]{fill:red} ; 0000ff",
        "[class~=two]{fill:red} ; ff0000",
        "rect:first-child{fill:red} ; ff0000",
        "rect:nth-child(2n){fill:red} ; 0000ff",
        "rect:not(.three){fill:red} ; ff0000",
        "rect:hover{fill:red} ; 0000ff",
        "rect,circle{fill:red} ; ff0000",
        "/* rect{fill:lime} */rect{/*;*/fill:red} ; ff0000",
        "rect{fill:nonsense;fill:} ; 0000ff",
        "rect{fill:lime;fill:nonsense} ; 00ff00",
        "g{fill:red} ; ff0000",
        "rect{fill:inherit} ; 0000ff",
        "rect{fill:initial} ; 000000",
        "g{color:red}rect{fill:currentColor} ; ff0000",
        "@media print{rect{fill:red}} ; 0000ff",
        "@media screen{rect{fill:red}} ; ff0000",
        "@media (prefers-color-scheme:dark){rect{fill:red}} ; 0000ff",
        ":root{--ink:red}rect{fill:var(--ink)} ; ff0000",
        "rect{fill:var(--none,lime)} ; 00ff00",
        "rect{fill:var(--none)} ; 0000ff",
        "rect{--a:var(--b);--b:var(--a);fill:var(--a)} ; 0000ff"})
    void sheets(String sheet, String colour) {
        Art art = Reads.page("<style>" + sheet.strip() + "</style>" + SHAPE);
        assertEquals(List.of(colour.strip()), Reads.colours(art));
    }

    @Test
    void theStyleAttributeBeatsTheSheetButNotImportance() {
        assertEquals(List.of("ff0000"), Reads.colours(Reads.page(
                "<style>#a{fill:lime}</style><rect id='a' style='fill:red' fill='blue' width='9' height='9'/>")));
        assertEquals(List.of("00ff00"), Reads.colours(Reads.page(
                "<style>#a{fill:lime!important}</style><rect id='a' style='fill:red' width='9' height='9'/>")));
    }

    @Test
    void geometryMayStandInStyle() {
        Art art = Reads.page("<style>circle{r:10px;cx:50px}</style><circle r='3' cy='50'/>");
        assertEquals(20, Reads.box(art.regions().get(0)).getWidth(), 1e-4);
        assertEquals(40, Reads.box(art.regions().get(0)).getMinX(), 1e-4);
    }

    @Test
    void whatIsNotReadIsNamed() {
        Art art = Reads.page("<style id='sheet'>@import url(other.css);@supports (x:y){rect{fill:red}}"
                + "rect:has(g){fill:red}@media (min-width:9px){rect{fill:red}}@keyframes k{}</style>"
                + "<rect id='r' width='9' height='9' style='fill:color-mix(in srgb,red,blue);rotate:3deg;"
                + "animation:k 1s'/>");
        assertTrue(Reads.names(art, ArtNotice.Kind.REFUSED, "@import", "sheet"), Reads.notices(art).toString());
        assertTrue(Reads.names(art, ArtNotice.Kind.UNSUPPORTED, "@supports", "sheet"));
        assertTrue(Reads.names(art, ArtNotice.Kind.UNSUPPORTED, "CSS selector", "sheet"));
        assertTrue(Reads.names(art, ArtNotice.Kind.UNSUPPORTED, "@media", "sheet"));
        assertTrue(Reads.names(art, ArtNotice.Kind.UNSUPPORTED, "fill", "r"));
        assertTrue(Reads.names(art, ArtNotice.Kind.UNSUPPORTED, "rotate", "r"));
        assertTrue(Reads.names(art, ArtNotice.Kind.IGNORED, "animation", "r"));
    }
}
