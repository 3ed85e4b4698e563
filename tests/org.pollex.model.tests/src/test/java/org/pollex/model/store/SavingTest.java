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
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.store.StoreException.Reason;

/** Saving, the last good state, and files that changed meanwhile. */
class SavingTest {

    private static final ModelStore<Design> STORE = ModelFiles.DESIGNS;

    @TempDir
    Path folder;

    @Test
    void createsSavesAndKeepsTheLastState() throws Exception {
        Path file = folder.resolve("a.design");
        Opened<Design> first = STORE.create(named("one"), file);
        assertEquals(Optional.empty(), STORE.lastGood(file));
        first.model().setName("two");
        Opened<Design> second = STORE.save(first);
        assertEquals("two", STORE.load(file).getName());
        assertEquals("one", STORE.load(STORE.lastGood(file).orElseThrow()).getName());
        second.model().setName("three");
        STORE.save(second);
        assertEquals("two", STORE.load(folder.resolve(".a.design.last")).getName());
        assertEquals(List.of(".a.design.last", "a.design"), names());
    }

    @Test
    void neverWritesOverWhatSomebodyElseWrote() throws Exception {
        Path file = folder.resolve("a.design");
        STORE.create(named("one"), file);
        Opened<Design> mine = STORE.open(file);
        Opened<Design> theirs = STORE.open(file);
        assertFalse(STORE.changedOnDisk(mine));
        theirs.model().setName("theirs");
        STORE.save(theirs);
        assertTrue(STORE.changedOnDisk(mine));
        byte[] before = Files.readAllBytes(file);
        mine.model().setName("mine");
        StoreException e = assertThrows(ChangedOnDiskException.class, () -> STORE.save(mine));
        assertEquals(file + ": was changed on disk since it was opened; open it again, or say that it may be replaced.",
                e.getMessage());
        assertArrayEquals(before, Files.readAllBytes(file));
        assertEquals(List.of(".a.design.last", "a.design"), names());
        STORE.replace(mine.model(), file);
        assertEquals("mine", STORE.load(file).getName());
    }

    @Test
    void createRefusesATakenName() throws Exception {
        Path file = Files.writeString(folder.resolve("a.design"), "anything");
        StoreException e = assertThrows(ChangedOnDiskException.class, () -> STORE.create(named("one"), file));
        assertTrue(e.getMessage().contains("is there already"), e.getMessage());
        assertEquals("anything", Files.readString(file));
        assertEquals(List.of("a.design"), names());
    }

    @Test
    void aRemovedFileIsNotBroughtBackUnasked() throws Exception {
        Path file = folder.resolve("a.design");
        Opened<Design> opened = STORE.create(named("one"), file);
        Files.delete(file);
        assertTrue(STORE.changedOnDisk(opened));
        StoreException e = assertThrows(ChangedOnDiskException.class, () -> STORE.save(opened));
        assertTrue(e.getMessage().contains("was removed"), e.getMessage());
        assertEquals(List.of(), names());
        STORE.create(opened.model(), file);
        assertEquals("one", STORE.load(file).getName());
    }

    @Test
    void touchedButEqualIsNotChanged() throws Exception {
        Path file = folder.resolve("a.design");
        Opened<Design> opened = STORE.create(named("one"), file);
        Files.setLastModifiedTime(file, FileTime.fromMillis(0));
        STORE.save(opened);
    }

    @Test
    void damagedFileIsRecoveredFromTheLastGoodState() throws Exception {
        Path file = folder.resolve("a.design");
        Opened<Design> opened = STORE.create(named("one"), file);
        opened.model().setName("two");
        STORE.save(opened);
        byte[] half = Arrays.copyOf(Files.readAllBytes(file), 150);
        Files.write(file, half);
        StoreException e = assertThrows(StoreException.class, () -> STORE.open(file));
        assertEquals(Reason.DAMAGED, e.reason());
        assertTrue(e.getMessage().endsWith("(the last good state is beside it: .a.design.last)."), e.getMessage());
        Opened<Design> recovered = STORE.recover(file);
        assertEquals("one", recovered.model().getName());
        assertArrayEquals(half, Files.readAllBytes(file));
        STORE.save(recovered);
        assertEquals("one", STORE.load(file).getName());
        // The damaged file did not take the place of the good one.
        assertEquals("one", STORE.load(STORE.lastGood(file).orElseThrow()).getName());
    }

    @Test
    void lostFileIsRecovered() throws Exception {
        Path file = folder.resolve("a.design");
        STORE.save(STORE.create(named("one"), file));
        Files.delete(file);
        STORE.save(STORE.recover(file));
        assertEquals("one", STORE.load(file).getName());
        StoreException e = assertThrows(StoreException.class, () -> STORE.recover(folder.resolve("b.design")));
        assertEquals(Reason.MISSING, e.reason());
    }

    @Test
    void wrongPlaces() throws Exception {
        assertReason(Reason.MISSING, () -> STORE.open(folder.resolve("none.design")));
        assertReason(Reason.MISSING, () -> STORE.open(folder.resolve("no/folder/none.design")));
        Path plain = Files.writeString(folder.resolve("plain"), "x");
        assertReason(Reason.UNREADABLE, () -> STORE.open(plain.resolve("a.design")));
        assertReason(Reason.NOT_A_FILE, () -> STORE.open(folder));
        assertReason(Reason.NOT_A_FILE, () -> STORE.create(named("a"), folder.resolve("a.svg")));
        assertReason(Reason.NOT_A_FILE, () -> STORE.create(named("a"), folder.resolve(".design")));
        assertReason(Reason.NOT_WRITTEN, () -> STORE.create(named("a"), folder.resolve("no/folder/a.design")));
        assertReason(Reason.NOT_WRITTEN, () -> STORE.create(named("a"), plain.resolve("a.design")));
        Files.createDirectory(folder.resolve("dir.design"));
        assertReason(Reason.NOT_A_FILE, () -> STORE.replace(named("a"), folder.resolve("dir.design")));
        assertReason(Reason.NOT_WRITTEN,
                () -> STORE.create(named("a"), folder.resolve("x".repeat(300) + ".design")));
        assertEquals(List.of("dir.design", "plain"), names());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Fährlinie – Nr. 1 ☕.design", "蜂蜜.DESIGN", "a b%20c#d?e&f.design", "-rf.design"})
    void namesOfAnyScript(String name) throws Exception {
        Path file = folder.resolve(name);
        Opened<Design> opened = STORE.create(named("one"), file);
        opened.model().setName("two");
        STORE.save(opened);
        assertEquals("two", STORE.load(file).getName());
        assertEquals("one", STORE.load(STORE.lastGood(file).orElseThrow()).getName());
    }

    @Test
    void theLongestNames() throws Exception {
        for (String name : List.of("n".repeat(248) + ".design", "ü".repeat(124) + ".design")) {
            Path file = folder.resolve(name);
            Opened<Design> opened = STORE.create(named("one"), file);
            STORE.save(opened);
            assertEquals("one", STORE.load(STORE.lastGood(file).orElseThrow()).getName());
        }
        assertEquals(4, names().size());
    }

    @Test
    void aLinkStaysALink() throws Exception {
        Path shared = Files.createDirectory(folder.resolve("shared"));
        Path file = shared.resolve("a.design");
        STORE.create(named("one"), file);
        Path link = Files.createSymbolicLink(folder.resolve("link.design"), Path.of("shared", "a.design"));
        Opened<Design> opened = STORE.open(link);
        opened.model().setName("two");
        STORE.save(opened);
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("two", STORE.load(file).getName());
        assertEquals(List.of("link.design", "shared"), names());
        Path broken = Files.createSymbolicLink(folder.resolve("broken.design"), Path.of("nowhere", "b.design"));
        assertReason(Reason.NOT_WRITTEN, () -> STORE.replace(named("x"), broken));
    }

    @Test
    void permissionsStay() throws Exception {
        Path file = folder.resolve("a.design");
        Opened<Design> opened = STORE.create(named("one"), file);
        var wanted = PosixFilePermissions.fromString("rw-rw----");
        Files.setPosixFilePermissions(file, wanted);
        STORE.save(opened);
        assertEquals(wanted, Files.getPosixFilePermissions(file));
        assertEquals(wanted, Files.getPosixFilePermissions(folder.resolve(".a.design.last")));
    }

    @Test
    void onlyWhatKilledProcessesLeftIsRemoved() throws Exception {
        Path file = folder.resolve("a.design");
        Opened<Design> opened = STORE.create(named("one"), file);
        Path running = SideNames.saving(file);
        String[] parts = running.getFileName().toString().split("-");
        Path gone = folder.resolve(parts[0] + "-999999999-1-1.saving");
        Path reused = folder.resolve(parts[0] + "-" + parts[1] + "-1000-7.saving");
        Path elsewhere = folder.resolve(".a.design.00000000-1-1-1.saving");
        Path abandoned = folder.resolve(".a.design.00000000-1-1-2.saving");
        Path own = folder.resolve(".a.design.mine.saving");
        Path other = folder.resolve(".b.design" + gone.getFileName().toString().substring(".a.design".length()));
        for (Path each : List.of(running, gone, reused, elsewhere, abandoned, own, other)) {
            Files.writeString(each, "half");
        }
        Files.setLastModifiedTime(abandoned, FileTime.fromMillis(0));
        STORE.save(opened);
        assertEquals(Stream.of(running, elsewhere, own, other, file, folder.resolve(".a.design.last"))
                .map(each -> each.getFileName().toString()).sorted().toList(), names());
        STORE.clean(folder.resolve("b.design"));
        assertFalse(Files.exists(other));
    }

    private interface Action {
        void run() throws Exception;
    }

    private static void assertReason(Reason reason, Action action) {
        StoreException e = assertThrows(StoreException.class, action::run);
        assertEquals(reason, e.reason(), e.getMessage());
        BadContentTest.assertSentence(e);
    }

    private static Design named(String name) {
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setName(name);
        return design;
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
