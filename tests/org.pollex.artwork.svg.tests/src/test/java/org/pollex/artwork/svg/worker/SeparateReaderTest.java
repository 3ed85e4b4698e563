/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.worker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;

/** The separate process: kept, ended, replaced, and never more than one refusal for the caller. */
class SeparateReaderTest {

    private static final ArtSource SMALL = source("<rect width=\"5\" height=\"5\" fill=\"#c00\"/>");

    private final Set<Long> before = new HashSet<>(workers());
    private SeparateReader reader = new SeparateReader();

    private static ArtSource source(String body) {
        return new ArtSource("art.svg", ("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10mm\" height=\"10mm\">"
                + body + "</svg>").getBytes(StandardCharsets.UTF_8));
    }

    @AfterEach
    void end() {
        reader.close();
    }

    private static List<Long> workers() {
        return ProcessHandle.current().children().filter(ProcessHandle::isAlive).map(ProcessHandle::pid).toList();
    }

    private List<Long> own() {
        return workers().stream().filter(pid -> !before.contains(pid)).toList();
    }

    private static void assertRead(Art art) {
        assertEquals(1, art.regions().size());
        assertEquals(0xcc0000, art.regions().get(0).paint().rgb());
        assertEquals(5 * 25.4 / 96, art.regions().get(0).path().bounds().getWidth(), 1e-6);
    }

    @Test
    void oneProcessReadsManyFiles() throws Exception {
        assertRead(reader.read(SMALL, ReadLimits.usual()));
        List<Long> first = own();
        assertEquals(1, first.size());
        for (int i = 0; i < 20; i++) {
            assertRead(reader.read(SMALL, ReadLimits.usual()));
        }
        assertEquals(first, own());
    }

    @Test
    void aKilledProcessIsReplaced() throws Exception {
        assertRead(reader.read(SMALL, ReadLimits.usual()));
        List<Long> first = own();
        ProcessHandle killed = ProcessHandle.of(first.get(0)).orElseThrow();
        killed.destroyForcibly();
        killed.onExit().get();
        assertRead(reader.read(SMALL, ReadLimits.usual()));
        assertFalse(own().contains(first.get(0)));
    }

    @Test
    void memoryIsBounded() throws Exception {
        reader.close();
        reader = new SeparateReader(12);
        ArtSource large = source("<path d=\"M0 0h1v1h-1z\"/>".repeat(100_000));
        ArtException e = assertThrows(ArtException.class, () -> reader.read(large, ReadLimits.usual()));
        assertEquals("art.svg: reading needs more than 12 MB of memory and was stopped; simplify the art and export "
                + "it again.", e.getMessage());
        assertRead(reader.read(SMALL, ReadLimits.usual()));
    }

    @Test
    void timeIsBounded() throws Exception {
        ReadLimits usual = ReadLimits.usual();
        ReadLimits hasty = new ReadLimits(usual.bytes(), usual.elements(), usual.depth(), usual.segments(),
                usual.pixels(), 1);
        ArtSource large = source("<path d=\"M0 0h1v1h-1z\"/>".repeat(100_000));
        ArtException e = assertThrows(ArtException.class, () -> reader.read(large, hasty));
        assertTrue(e.getMessage().contains("took longer than 0.001 s"), e.getMessage());
        assertRead(reader.read(SMALL, ReadLimits.usual()));
    }

    @Test
    void aProcessKilledAtWorkGivesOneSentence() throws Exception {
        assertRead(reader.read(SMALL, ReadLimits.usual()));
        ArtSource large = source("<path d=\"M0 0h1v1h-1z\"/>".repeat(190_000));
        ExecutorService thread = Executors.newSingleThreadExecutor();
        Future<String> said = thread.submit(() -> {
            try {
                reader.read(large, ReadLimits.usual());
                return "read";
            } catch (ArtException e) {
                return e.getMessage();
            }
        });
        ProcessHandle.of(own().get(0)).orElseThrow().destroyForcibly();
        String message = said.get();
        // The kill may come before the file is sent, and then a new process reads it; both are fine, a crash is not.
        assertTrue(message.equals("read") || message.equals("art.svg: reading broke off; open the art in a drawing "
                + "program and export it again."), message);
        thread.shutdown();
        assertRead(reader.read(SMALL, ReadLimits.usual()));
    }

    @Test
    void twoThreadsGetTwoProcesses() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(4);
        List<Future<Art>> arts = IntStream.range(0, 40)
                .mapToObj(i -> threads.submit(() -> reader.read(SMALL, ReadLimits.usual()))).toList();
        for (Future<Art> art : arts) {
            assertRead(art.get());
        }
        threads.shutdown();
        assertTrue(own().size() <= 2);
    }

    @Test
    void aRefusalKeepsItsWords() {
        ArtException e = assertThrows(ArtException.class,
                () -> reader.read(source("<use id=\"u\" href=\"#u\"/>"), ReadLimits.usual()));
        assertEquals("art.svg: use u refers to itself; ask for a repaired file.", e.getMessage());
    }

    @Test
    void closingEndsTheProcess() throws Exception {
        reader.read(SMALL, ReadLimits.usual());
        ProcessHandle process = ProcessHandle.of(own().get(0)).orElseThrow();
        reader.close();
        process.onExit().get();
        assertFalse(process.isAlive());
    }
}
