/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.conformance;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.pollex.testkit.Rsvg;

/** librsvg with the shipped fonts, which are copied out of the artwork bundle. */
final class Reference {

    private static final List<String> FONTS = List.of("Sans", "Serif", "Mono");
    private static final List<String> CUTS = List.of("Regular", "Bold", "Italic", "BoldItalic");
    private static Rsvg rsvg;

    private Reference() {
    }

    static BufferedImage paint(byte[] svg, int width, int height) throws IOException {
        return shared().paint(svg, width, height);
    }

    private static synchronized Rsvg shared() {
        if (rsvg == null) {
            try {
                Path folder = Files.createTempDirectory("fonts");
                for (String family : FONTS) {
                    for (String cut : CUTS) {
                        String name = "Liberation" + family + "-" + cut + ".ttf";
                        try (var in = Reference.class.getResourceAsStream("/fonts/" + name)) {
                            if (in == null) {
                                throw new IllegalStateException("The shipped font " + name
                                        + " is not on the class path.");
                            }
                            Files.copy(in, folder.resolve(name));
                        }
                    }
                }
                rsvg = new Rsvg(folder);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return rsvg;
    }
}
