/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.work.Recovery;

/** Copies of unsaved work: what is kept, set aside, offered, thrown away. */
class RecoveryTest {

    @TempDir
    Path folder;

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private List<Path> files(Path place) throws Exception {
        try (var all = Files.list(place)) {
            return all.toList();
        }
    }

    @Test
    void keepsTheNewestOfEachDesign() throws Exception {
        Recovery recovery = new Recovery(folder.resolve("kept"));
        Path one = folder.resolve("one.design");
        Path line = folder.resolve("two\nlines.design");
        Files.write(one, bytes("saved"));
        assertTrue(recovery.kept(one).isEmpty());
        recovery.keep(one, "aa", bytes("first"));
        recovery.keep(one, "aa", bytes("second\nline"));
        recovery.keep(line, "", bytes("other"));
        assertArrayEquals(bytes("second\nline"), recovery.kept(one).orElseThrow().bytes());
        assertEquals("aa", recovery.kept(one).orElseThrow().base());
        assertArrayEquals(bytes("other"), recovery.kept(line).orElseThrow().bytes());
        assertEquals(2, files(folder.resolve("kept")).size(), "half-written files are left");
        recovery.drop(one);
        assertTrue(recovery.kept(one).isEmpty());
        assertTrue(recovery.kept(line).isPresent());
    }

    @Test
    void whatWasSavedIsNotOffered() throws Exception {
        Recovery recovery = new Recovery(folder.resolve("kept"));
        Path one = folder.resolve("one.design");
        Files.write(one, bytes("same"));
        recovery.keep(one, "aa", bytes("same"));
        assertTrue(recovery.kept(one).isEmpty());
        assertEquals(List.of(), files(folder.resolve("kept")));
    }

    @Test
    void undecidedWorkSurvivesNewWorkAndItsSave() throws Exception {
        Recovery recovery = new Recovery(folder.resolve("kept"));
        Path one = folder.resolve("one.design");
        recovery.keep(one, "aa", bytes("old"));
        recovery.setAside(one);
        recovery.keep(one, "aa", bytes("new"));
        assertArrayEquals(bytes("new"), recovery.kept(one).orElseThrow().bytes());
        recovery.drop(one);
        assertArrayEquals(bytes("old"), recovery.kept(one).orElseThrow().bytes());
        recovery.dropAside(one);
        assertTrue(recovery.kept(one).isEmpty());
    }

    @Test
    void anUnreadableCopyIsLeftAlone() throws Exception {
        Path place = folder.resolve("kept");
        Recovery recovery = new Recovery(place);
        Path one = folder.resolve("one.design");
        recovery.keep(one, "aa", bytes("work"));
        Path copy = files(place).get(0);
        byte[] whole = Files.readAllBytes(copy);
        for (String damaged : new String[] {"", "\n\n\n\n", "something else\n1\n2\n3\n4",
            "unsaved design 1\nx\naa\nnow\n"}) {
            Files.write(copy, bytes(damaged));
            assertTrue(recovery.kept(one).isEmpty(), damaged);
            assertTrue(Files.exists(copy));
        }
        Files.write(copy, whole);
        assertTrue(recovery.kept(one).isPresent());
    }
}
