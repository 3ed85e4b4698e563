/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Asks {@code transicc} of LittleCMS (Debian package {@code liblcms2-utils}), a colour engine made by others, to
 * convert between its built-in profiles by ICC's relative colorimetric intent. A missing program fails the test that
 * asks.
 */
final class Transicc {

    private Transicc() {
    }

    /**
     * Converts colours, all in one run.
     *
     * @param from     a built-in profile: {@code *sRGB} (0 to 255), {@code *Lab} or {@code *XYZ} (Y 100 for white)
     * @param to       another one
     * @param colours  rows of three numbers
     * @return rows of three numbers, four decimals, in the order of the colours
     */
    static List<double[]> convert(String from, String to, List<double[]> colours) throws IOException {
        String asked = colours.stream().map(c -> String.format(Locale.ROOT, "%.10f %.10f %.10f%n", c[0], c[1], c[2]))
                .collect(Collectors.joining());
        Path said = Files.createTempFile("transicc", ".txt");
        try {
            ProcessBuilder builder = new ProcessBuilder("transicc", "-n", "-i" + from, "-o" + to, "-t1");
            builder.environment().put("LC_ALL", "C");
            builder.redirectError(ProcessBuilder.Redirect.DISCARD).redirectOutput(said.toFile());
            Process process = start(builder);
            try (OutputStream in = process.getOutputStream()) {
                in.write(asked.getBytes(StandardCharsets.US_ASCII));
            }
            try {
                assertEquals(0, process.waitFor(), "transicc from " + from + " to " + to);
            } catch (InterruptedException e) {
                throw new IOException("Nobody waited for transicc.", e);
            }
            List<double[]> rows = Files.readAllLines(said).stream().filter(line -> !line.isBlank())
                    .map(line -> Arrays.stream(line.strip().split("\\s+")).mapToDouble(Double::parseDouble).toArray())
                    .toList();
            assertEquals(colours.size(), rows.size(), "answers of transicc from " + from + " to " + to);
            return rows;
        } finally {
            Files.deleteIfExists(said);
        }
    }

    private static Process start(ProcessBuilder builder) {
        try {
            return builder.start();
        } catch (IOException e) {
            throw new AssertionError("transicc is missing, which these tests compare with; install the package "
                    + "liblcms2-utils.", e);
        }
    }
}
