/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pollex.commandline.Main;
import org.pollex.commandline.Studio;

/**
 * Disks that take no more. The call runs in a process of its own, in a small file system of its own where the system
 * lets the test mount one, else under a limit on the size of a file, which fails a write half-way just the same.
 */
class FullDiskTest {

    private static final int KILOBYTES = 24;

    @TempDir
    private Path folder;
    private Studio studio;

    @BeforeEach
    void open() throws Exception {
        studio = new Studio(folder);
        StringBuilder dots = new StringBuilder();
        for (int i = 0; i < 256; i++) {
            dots.append("<circle cx=\"").append(i % 16 * 1.2 + 1).append("\" cy=\"").append(i / 16 * 1.2 + 1)
                    .append("\" r=\"0.04\"/>");
        }
        dots.append("<!--").append(" padding".repeat(5000)).append("-->");
        studio.write("in/dots.svg", Studio.svg(22, 22, dots.toString()));
        assertEquals(0, studio.make("a.design", "--front", "in/dots.svg", "--largest").code());
        Files.createDirectory(folder.resolve("disk"));
    }

    /** How the call ended: its code, its errors, and what it left on the disk. */
    private record Left(int code, List<String> errors, List<String> files) {
    }

    private Left call(String way, String words) throws Exception {
        String java = "'" + Path.of(System.getProperty("java.home"), "bin", "java") + "' -XX:-UsePerfData -cp \"$CP\" "
                + Main.class.getName() + " " + words + " 2>errors; echo $? >code; ls -A disk >left";
        String script = way.equals("mount") ? "mount -t tmpfs -o size=" + KILOBYTES + "k none disk && { " + java + "; }"
                : "ulimit -f " + KILOBYTES + "; " + java;
        List<String> command = way.equals("mount") ? List.of("unshare", "--user", "--map-root-user", "--mount", "sh",
                "-c", script) : List.of("bash", "-c", script);
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("CP", System.getProperty("java.class.path"));
        Process process = builder.start();
        assertTrue(process.waitFor(120, TimeUnit.SECONDS));
        return new Left(Integer.parseInt(studio.text("code").strip()), studio.text("errors").lines().toList(),
                studio.text("left").lines().toList());
    }

    private String way() throws IOException, InterruptedException {
        Process process = new ProcessBuilder("unshare", "--user", "--map-root-user", "--mount", "sh", "-c",
                "mount -t tmpfs -o size=64k none disk").directory(folder.toFile()).start();
        String said = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        return process.waitFor() == 0 && said.isEmpty() ? "mount" : "limit";
    }

    @ParameterizedTest
    @ValueSource(strings = {"check a.design --json disk/r.json --fail-on never",
        "check a.design --sarif disk/r.sarif --fail-on never", "picture a.design --png disk/p.png",
        "proof a.design --pdf disk/p.pdf", "place a.design --out disk/b.design",
        "new disk/b.design --product standard-pick --material solid-white --method pad-one-colour --ink navy "
            + "--front in/dots.svg --largest", "demo disk/sample"})
    void leaveNothingHalfWritten(String words) throws Exception {
        Left left = call(way(), words);
        check(left, words);
    }

    @Test
    void meetALimitOnFileSizesTheSameWay() throws Exception {
        Left left = call("limit", "picture a.design --png disk/p.png");
        check(left, "picture");
    }

    private void check(Left left, String words) throws IOException {
        assertEquals(4, left.code(), words + ": " + left.errors());
        assertEquals(1, left.errors().size(), left.errors().toString());
        assertTrue(left.errors().get(0).contains("cannot be written"), left.errors().toString());
        if (words.startsWith("demo")) {
            return;
        }
        assertEquals(List.of(), left.files(), words);
        try (Stream<Path> files = Files.walk(folder)) {
            assertTrue(files.noneMatch(file -> file.toString().endsWith(".saving")));
        }
    }
}
