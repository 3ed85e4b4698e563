/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.testkit;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import javax.imageio.ImageIO;

/**
 * Paints SVG with {@code rsvg-convert} of librsvg (Debian package {@code librsvg2-bin}), the outside reference for what
 * SVG means. Sees only the fonts of one folder. A missing program fails the test that asks.
 */
public final class Rsvg {

    private final Path configuration;

    /** @param fonts  folder of the only fonts there are */
    public Rsvg(Path fonts) throws IOException {
        Path folder = Files.createTempDirectory("rsvg");
        configuration = folder.resolve("fonts.conf");
        Files.writeString(configuration, """
                <?xml version="1.0"?>
                <!DOCTYPE fontconfig SYSTEM "fonts.dtd">
                <fontconfig>
                  <dir>%s</dir>
                  <cachedir>%s</cachedir>
                  <match target="pattern"><test name="family"><string>sans-serif</string></test>
                    <edit name="family" mode="assign"><string>Liberation Sans</string></edit></match>
                  <match target="pattern"><test name="family"><string>serif</string></test>
                    <edit name="family" mode="assign"><string>Liberation Serif</string></edit></match>
                  <match target="pattern"><test name="family"><string>monospace</string></test>
                    <edit name="family" mode="assign"><string>Liberation Mono</string></edit></match>
                  <match target="font"><edit name="hinting" mode="assign"><bool>false</bool></edit></match>
                </fontconfig>
                """.formatted(fonts.toAbsolutePath(), folder.resolve("cache")));
    }

    /** Paints on white. */
    public BufferedImage paint(byte[] svg, int width, int height) throws IOException {
        Path file = Files.createTempFile("art", ".svg");
        try {
            Files.write(file, svg);
            ProcessBuilder builder = new ProcessBuilder(List.of("rsvg-convert", "--background-color=white",
                    "--format=png", "--width=" + width, "--height=" + height, file.toString()));
            builder.environment().put("FONTCONFIG_FILE", configuration.toString());
            builder.environment().put("LANG", "C.UTF-8");
            builder.redirectError(ProcessBuilder.Redirect.DISCARD);
            Process process = start(builder);
            byte[] png;
            try (InputStream out = process.getInputStream()) {
                png = out.readAllBytes();
            }
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
            if (image == null) {
                throw new IOException("rsvg-convert painted nothing.");
            }
            return image;
        } finally {
            Files.deleteIfExists(file);
        }
    }

    private static Process start(ProcessBuilder builder) {
        try {
            return builder.start();
        } catch (IOException e) {
            throw new AssertionError("rsvg-convert is missing, which these tests compare with; install the package "
                    + "librsvg2-bin.", e);
        }
    }
}
