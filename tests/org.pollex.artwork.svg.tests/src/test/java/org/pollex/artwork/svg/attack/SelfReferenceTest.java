/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.attack;

import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Elements that come back to themselves through references. */
class SelfReferenceTest {

    @TestFactory
    Stream<DynamicTest> loops() {
        String rect = "<rect width=\"9\" height=\"9\"/>";
        return Stream.of("<use id=\"u\" xlink:href=\"#u\"/>", "<g id=\"u\"><use xlink:href=\"#u\"/></g>",
                "<g id=\"a\"><use xlink:href=\"#b\"/></g><g id=\"b\"><use xlink:href=\"#a\"/></g>",
                "<symbol id=\"s\"><use xlink:href=\"#s\"/></symbol><use xlink:href=\"#s\"/>",
                "<pattern id=\"p\" width=\"5\" height=\"5\"><rect width=\"4\" height=\"4\" fill=\"url(#p)\"/></pattern>"
                        + "<rect width=\"50\" height=\"50\" fill=\"url(#p)\"/>",
                "<pattern id=\"p\" width=\"5\" height=\"5\" xlink:href=\"#q\"/><pattern id=\"q\" xlink:href=\"#p\"/>"
                        + "<rect width=\"50\" height=\"50\" fill=\"url(#p)\"/>",
                "<g fill=\"url(#p)\"><pattern id=\"p\" width=\"5\" height=\"5\"><rect width=\"4\" height=\"4\"/>"
                        + "</pattern><rect width=\"50\" height=\"50\"/></g>",
                "<style>.x{fill:url(#p)}</style><pattern id=\"p\" width=\"5\" height=\"5\"><rect class=\"x\" width=\"4\""
                        + " height=\"4\"/></pattern><rect class=\"x\" width=\"50\" height=\"50\"/>",
                "<marker id=\"m\"><path d=\"M0 0L5 5 9 0\" marker-mid=\"url(#m)\"/></marker>"
                        + "<path d=\"M0 0L5 5 9 0\" marker-mid=\"url(#m)\"/>",
                "<clipPath id=\"c\" clip-path=\"url(#c)\">" + rect + "</clipPath><g clip-path=\"url(#c)\">" + rect
                        + "</g>",
                "<clipPath id=\"c\"><rect width=\"9\" height=\"9\" clip-path=\"url(#c)\"/></clipPath>"
                        + "<g clip-path=\"url(#c)\">" + rect + "</g>",
                "<linearGradient id=\"g\" xlink:href=\"#h\"/><linearGradient id=\"h\" xlink:href=\"#g\"/>"
                        + "<rect width=\"9\" height=\"9\" fill=\"url(#g)\"/>")
                .map(body -> DynamicTest.dynamicTest(body, () -> Outcome.of(rect + body).refused("itself")));
    }
}
