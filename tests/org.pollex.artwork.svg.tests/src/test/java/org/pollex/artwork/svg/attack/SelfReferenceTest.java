/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.attack;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;
import org.pollex.artwork.svg.gate.SvgGate;

/** Elements that come back to themselves through references. */
class SelfReferenceTest {

    private static final String RECT = "<rect width=\"9\" height=\"9\"/>";

    @TestFactory
    Stream<DynamicTest> readersInOrder() {
        return loops().map(body -> DynamicTest.dynamicTest(body, () -> Outcome.of(RECT + body).ended()));
    }

    @TestFactory
    Stream<DynamicTest> gate() {
        return loops().map(body -> DynamicTest.dynamicTest(body, () -> {
            ArtSource source = new ArtSource("loop.svg", ("<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink="
                    + "\"http://www.w3.org/1999/xlink\">" + body + "</svg>").getBytes(StandardCharsets.UTF_8));
            ArtException e = assertThrows(ArtException.class, () -> SvgGate.clean(source, ReadLimits.usual()));
            assertTrue(e.getMessage().contains("refers to itself"), e.getMessage());
        }));
    }

    private static Stream<String> loops() {
        return Stream.of("<use id=\"u\" xlink:href=\"#u\"/>", "<g id=\"u\"><use xlink:href=\"#u\"/></g>",
                "<g id=\"a\"><use xlink:href=\"#b\"/></g><g id=\"b\"><use xlink:href=\"#a\"/></g>",
                "<symbol id=\"s\"><use xlink:href=\"#s\"/></symbol><use xlink:href=\"#s\"/>",
                "<pattern id=\"p\" width=\"5\" height=\"5\"><rect width=\"4\" height=\"4\" fill=\"url(#p)\"/></pattern>"
                        + "<rect width=\"50\" height=\"50\" fill=\"url(#p)\"/>",
                "<pattern id=\"p\" width=\"5\" height=\"5\" xlink:href=\"#q\"/><pattern id=\"q\" xlink:href=\"#p\"/>"
                        + "<rect width=\"50\" height=\"50\" fill=\"url(#p)\"/>",
                "<g fill=\"url(#p)\"><pattern id=\"p\" width=\"5\" height=\"5\"><rect width=\"4\" height=\"4\"/>"
                        + "</pattern><rect width=\"50\" height=\"50\"/></g>",
                "<style>.x{fill:url(#p)}</style><pattern id=\"p\" width=\"5\" height=\"5\">"
                        + "<rect class=\"x\" width=\"4\""
                        + " height=\"4\"/></pattern><rect class=\"x\" width=\"50\" height=\"50\"/>",
                "<marker id=\"m\"><path d=\"M0 0L5 5 9 0\" marker-mid=\"url(#m)\"/></marker>"
                        + "<path d=\"M0 0L5 5 9 0\" marker-mid=\"url(#m)\"/>",
                "<clipPath id=\"c\" clip-path=\"url(#c)\">" + RECT + "</clipPath><g clip-path=\"url(#c)\">" + RECT
                        + "</g>",
                "<clipPath id=\"c\"><rect width=\"9\" height=\"9\" clip-path=\"url(#c)\"/></clipPath>"
                        + "<g clip-path=\"url(#c)\">" + RECT + "</g>",
                "<linearGradient id=\"g\" xlink:href=\"#h\"/><linearGradient id=\"h\" xlink:href=\"#g\"/>"
                        + "<rect width=\"9\" height=\"9\" fill=\"url(#g)\"/>");
    }
}
