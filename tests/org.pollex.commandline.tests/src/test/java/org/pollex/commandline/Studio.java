/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.pollex.making.session.Session;
import org.pollex.rules.Contributions;
import org.pollex.rules.Suite;

/** Makes calls of the command line in a folder, in this process, with everything that is installed. */
public final class Studio {

    public static final Suite SUITE = Suite.of(
            Contributions.fromClassPath(Studio.class.getClassLoader()));
    public static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private final Path folder;

    /** How a call ended. */
    public record Answer(int code, String out, String err) {

        /** The lines of the error stream. */
        public List<String> errors() {
            return err.lines().toList();
        }
    }

    public Studio(Path folder) {
        this.folder = folder;
    }

    public Answer call(String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(words, new Session(new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), folder, SUITE, TODAY, false));
        return new Answer(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** A call of {@code new} on a standard pick. */
    public Answer make(String out, String... more) {
        List<String> words = new ArrayList<>(List.of("new", out, "--product", "standard-pick", "--material",
                "solid-white", "--method", "pad-one-colour", "--ink", "navy"));
        words.addAll(List.of(more));
        return call(words.toArray(new String[0]));
    }

    public Path write(String name, String text) {
        return write(name, text.getBytes(StandardCharsets.UTF_8));
    }

    public Path write(String name, byte[] bytes) {
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            return Files.write(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public byte[] bytes(String name) {
        try {
            return Files.readAllBytes(folder.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    /** All files below the folder, by relative path, sorted. */
    public List<String> files() {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).map(file -> folder.relativize(file).toString()).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Art of a physical size with one filled shape, 1 user unit = 1 mm. */
    public static String svg(double width, double height, String shapes) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width + "mm\" height=\"" + height
                + "mm\" viewBox=\"0 0 " + width + " " + height + "\">" + shapes + "</svg>";
    }

    /** A square of 8 mm with a margin of 2 mm on the left and top and of 6 mm on the right and bottom. */
    public static String square() {
        return svg(16, 16, "<rect x=\"2\" y=\"2\" width=\"8\" height=\"8\" fill=\"#123456\"/>");
    }

    /** A square with a line of 0.05 mm beside it. */
    public static String hairline() {
        return svg(12, 12, "<rect x=\"0\" y=\"0\" width=\"8\" height=\"12\" fill=\"#123456\"/>"
                + "<rect x=\"10\" y=\"0\" width=\"0.05\" height=\"12\" fill=\"#123456\"/>");
    }
}
