/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.session;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SafeOutputTest {

    @TempDir
    private Path folder;

    private List<String> names() throws Exception {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void writesOverWhatIsThereAndLeavesNothingBeside() throws Exception {
        Path file = folder.resolve("a.json");
        Files.writeString(file, "old");
        SafeOutput.write(file, "a.json", new byte[] {1, 2});
        assertArrayEquals(new byte[] {1, 2}, Files.readAllBytes(file));
        assertEquals(List.of("a.json"), names());
    }

    @Test
    void makesFoldersOnTheWay() throws Exception {
        Path file = folder.resolve("x/y/a.json");
        SafeOutput.write(file, "x/y/a.json", new byte[] {1});
        assertTrue(Files.exists(file));
    }

    @Test
    void keepsALinkALink() throws Exception {
        Path file = Files.writeString(folder.resolve("real.json"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), file);
        SafeOutput.write(link, "link.json", new byte[] {7});
        assertTrue(Files.isSymbolicLink(link));
        assertArrayEquals(new byte[] {7}, Files.readAllBytes(file));
    }

    @Test
    void refusesAFolderAndAFileInThePlaceOfAFolder() throws Exception {
        Refusal refused = assertThrows(Refusal.class, () -> SafeOutput.write(folder, "out", new byte[1]));
        assertEquals(ExitCode.NOT_WRITTEN, refused.code());
        Files.writeString(folder.resolve("plain"), "x");
        refused = assertThrows(Refusal.class,
                () -> SafeOutput.write(folder.resolve("plain/sub/a.json"), "plain/sub/a.json", new byte[1]));
        assertEquals(ExitCode.NOT_WRITTEN, refused.code());
        assertTrue(refused.getMessage().startsWith("plain/sub/a.json: cannot be written ("), refused.getMessage());
        assertEquals(List.of("plain"), names());
    }

    @Test
    void takesFoldersAwayAgainWhenTheNameCannotBe() throws Exception {
        Path file = folder.resolve("new/deep").resolve("n".repeat(300));
        assertThrows(Refusal.class, () -> SafeOutput.write(file, "long", new byte[1]));
        assertFalse(Files.exists(folder.resolve("new")));
    }
}
