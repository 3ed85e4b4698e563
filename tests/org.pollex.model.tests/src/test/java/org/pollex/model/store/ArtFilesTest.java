/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Placement;
import org.pollex.model.store.StoreException.Reason;

/** A client's file comes beside the design unchanged and is found again, or its absence is named. */
class ArtFilesTest {

    @TempDir
    Path folder;
    private Path client;
    private Path design;

    @BeforeEach
    void folders() throws IOException {
        client = Files.createDirectories(folder.resolve("client"));
        design = Files.createDirectories(folder.resolve("job")).resolve("a.design");
    }

    /** "abc" and the empty message: FIPS 180-4 examples, NIST Cryptographic Standards and Guidelines. */
    @Test
    void hashOfPublishedExamples() throws Exception {
        assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
                ArtFiles.sha256("abc".getBytes(StandardCharsets.US_ASCII)));
        assertEquals("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
                ArtFiles.sha256(Files.createFile(client.resolve("empty"))));
    }

    @Test
    void copiesUnchangedOnce() throws Exception {
        byte[] content = "<svg/>\r\n\u0000\u00ff".getBytes(StandardCharsets.ISO_8859_1);
        Path logo = Files.write(client.resolve("logo.svg"), content);
        ArtFile first = ArtFiles.adopt(design, logo);
        assertEquals(new ArtFile("art/logo.svg", Hashes.sha256(content)), first);
        assertArrayEquals(content, Files.readAllBytes(design.resolveSibling("art/logo.svg")));
        assertEquals(first, ArtFiles.adopt(design, logo));
        assertEquals(first, ArtFiles.adopt(design, design.resolveSibling("art/logo.svg")));
        assertEquals(List.of("logo.svg"), copies());
        assertArrayEquals(content, Files.readAllBytes(logo));
    }

    @Test
    void sameNameOtherContentGetsANumber() throws Exception {
        assertEquals("art/logo.svg", adopt("one", "logo.svg"));
        assertEquals("art/logo-2.svg", adopt("two", "logo.svg"));
        assertEquals("art/logo-3.svg", adopt("three", "logo.svg"));
        assertEquals("art/logo-2.svg", adopt("two", "logo.svg"));
        // A folder with two names that differ in capitals alone could not be carried to every system.
        assertEquals("art/LOGO-4.svg", adopt("four", "LOGO.svg"));
        assertEquals("art/logo.svg", adopt("one", "LOGO.svg"));
        assertEquals("one", Files.readString(design.resolveSibling("art/logo.svg")));
    }

    @ParameterizedTest
    @CsvSource({"'Fähre ☕ 蜂.svg', 'Fähre ☕ 蜂.svg'", "'e\u0301.svg', '\u00e9.svg'", "'a:b?c*.svg', 'a_b_c_.svg'",
        "'con.svg', '_con.svg'", "'dots. . ', 'dots'", "'.svg', '.svg'", "'a\nb.svg', 'a_b.svg'"})
    void namesThatEverySystemTakes(String given, String kept) throws Exception {
        assertEquals("art/" + kept, adopt("x", given));
    }

    @Test
    void veryLongNames() throws Exception {
        for (String name : List.of("n".repeat(251) + ".svg", "ü".repeat(120) + ".svg", "\uD83D\uDC1D".repeat(60))) {
            String path = adopt("x" + name, name);
            String copy = path.substring("art/".length());
            assertTrue(copy.getBytes(StandardCharsets.UTF_8).length <= 150, copy);
            assertTrue(!name.endsWith(".svg") || copy.endsWith(".svg"), copy);
            assertFalse(copy.contains("?") || copy.contains("\uFFFD"), copy);
            assertEquals("x" + name, Files.readString(design.resolveSibling(path)));
        }
    }

    @Test
    void whatCannotBeTaken() throws Exception {
        assertRefused(Reason.MISSING, client.resolve("none.svg"), design);
        assertRefused(Reason.NOT_A_FILE, client, design);
        assertRefused(Reason.NOT_A_FILE, Path.of("/dev/zero"), design);
        Path logo = Files.writeString(client.resolve("logo.svg"), "x");
        assertRefused(Reason.NOT_WRITTEN, logo, folder.resolve("no/folder/a.design"));
        Files.writeString(design.resolveSibling("art"), "a file in the way");
        assertRefused(Reason.NOT_WRITTEN, logo, design);
        assertEquals("a file in the way", Files.readString(design.resolveSibling("art")));
    }

    @Test
    void stateOfTheArt() throws Exception {
        Placement placement = placement(adopt("one", "logo.svg"), Hashes.sha256("one".getBytes()));
        Path copy = design.resolveSibling("art/logo.svg");
        assertEquals(copy, assertInstanceOf(ArtState.Present.class, ArtFiles.state(design, placement)).file());
        Files.writeString(copy, "other");
        ArtState.Changed changed = assertInstanceOf(ArtState.Changed.class, ArtFiles.state(design, placement));
        assertEquals(Hashes.sha256("other".getBytes()), changed.sha256());
        assertEquals(design + ": art \"art/logo.svg\" is not the file that was placed; put that one back or place it "
                + "anew.", changed.message());
        placement.setSha256(null);
        assertInstanceOf(ArtState.Present.class, ArtFiles.state(design, placement));
        Files.delete(copy);
        assertEquals(design + ": art \"art/logo.svg\" is missing; put it back or place it anew.",
                assertInstanceOf(ArtState.Missing.class, ArtFiles.state(design, placement)).message());
    }

    @ParameterizedTest
    @ValueSource(strings = {"../client/logo.svg", "/etc/passwd", "art/../../client/logo.svg", "C:/logo.svg",
        "file:///etc/passwd", "http://example.org/x.svg", "..\\client\\logo.svg", "", ".", "a\u0000b", "link/logo.svg"})
    void pathsThatLeaveTheFolderAreRefused(String path) throws Exception {
        Files.writeString(client.resolve("logo.svg"), "secret");
        Files.createSymbolicLink(design.resolveSibling("link"), client);
        ArtState.Refused refused = assertInstanceOf(ArtState.Refused.class,
                ArtFiles.state(design, placement(path, null)));
        assertTrue(refused.message().endsWith("copy the file into art/ and place it from there."), refused.message());
    }

    private String adopt(String content, String name) throws Exception {
        Path file = Files.writeString(client.resolve(name), content);
        ArtFile copy = ArtFiles.adopt(design, file);
        Files.delete(file);
        return copy.path();
    }

    private void assertRefused(Reason reason, Path art, Path where) {
        StoreException e = assertThrows(StoreException.class, () -> ArtFiles.adopt(where, art));
        assertEquals(reason, e.reason(), e.getMessage());
        BadContentTest.assertSentence(e);
    }

    private static Placement placement(String path, String sha256) {
        Placement placement = DesignFactory.eINSTANCE.createPlacement();
        placement.setArt(path);
        placement.setSha256(sha256);
        return placement;
    }

    private List<String> copies() throws IOException {
        try (Stream<Path> files = Files.list(design.resolveSibling("art"))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
