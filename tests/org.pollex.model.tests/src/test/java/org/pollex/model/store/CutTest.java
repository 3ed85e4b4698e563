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
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.store.StoreException.Reason;

/**
 * A save that is stopped after any byte it writes and before any step it takes leaves the old file or the new one.
 */
class CutTest {

    /** What is left when power goes: nothing after it runs, clean-up included. */
    private static final class Cut extends Error {
        private static final long serialVersionUID = 1L;
    }

    /** Lets through so many bytes and steps, each step counting as one, then stops. */
    private static final class CutDisk extends Disk {

        private long left;
        private final boolean power;
        private boolean off;

        CutDisk(long left, boolean power) {
            this.left = left;
            this.power = power;
        }

        private void step() throws IOException {
            if (off) {
                throw new Cut();
            }
            if (left-- <= 0) {
                stop();
            }
        }

        private void stop() throws IOException {
            if (power) {
                off = true;
                throw new Cut();
            }
            throw new FileSystemException("x", null, "No space left on device");
        }

        @Override
        void create(Path file, byte[] bytes) throws IOException {
            step();
            if (bytes.length > left) {
                super.create(file, Arrays.copyOf(bytes, (int) Math.max(0, left)));
                left = 0;
                stop();
            }
            super.create(file, bytes);
            left -= bytes.length;
        }

        @Override
        void rename(Path from, Path to) throws IOException {
            step();
            super.rename(from, to);
        }

        @Override
        void claim(Path from, Path to) throws IOException {
            step();
            super.claim(from, to);
        }

        @Override
        void delete(Path file) throws IOException {
            if (off) {
                throw new Cut();
            }
            super.delete(file);
        }

        @Override
        void flushFolder(Path folder) {
            if (off) {
                throw new Cut();
            }
        }
    }

    @TempDir
    Path folder;

    @Test
    void powerCutAtEveryByteOfASave() throws Exception {
        Path file = folder.resolve("a.design");
        byte[] old = bytes("old");
        byte[] young = bytes("young");
        int oldSeen = 0;
        int youngSeen = 0;
        long budget = 0;
        for (boolean cut = true; cut; budget++) {
            empty();
            Opened<Design> opened = ModelFiles.DESIGNS.create(named("older"), file);
            opened.model().setName("old");
            opened = ModelFiles.DESIGNS.save(opened);
            opened.model().setName("young");
            cut = isCut(budget, opened);
            byte[] now = Files.readAllBytes(file);
            if (Arrays.equals(now, old)) {
                oldSeen++;
            } else {
                assertArrayEquals(young, now, "after " + budget + " bytes and steps");
                youngSeen++;
            }
            ModelFiles.DESIGNS.open(file);
            assertTrue(ModelFiles.DESIGNS.lastGood(file).isPresent(), "after " + budget);
        }
        assertTrue(oldSeen > young.length && youngSeen > 0, oldSeen + " old, " + youngSeen + " new");
    }

    @Test
    void powerCutAtEveryByteOfANewFile() throws Exception {
        Path file = folder.resolve("a.design");
        int without = 0;
        long budget = 0;
        for (boolean cut = true; cut; budget++) {
            empty();
            Opened<Design> fresh = new Opened<>(file, named("young"), Stamp.ABSENT, 1);
            cut = isCut(budget, fresh);
            if (Files.exists(file)) {
                assertEquals("young", ModelFiles.DESIGNS.load(file).getName());
            } else {
                without++;
            }
        }
        assertTrue(without > bytes("young").length, without + " times no file");
        assertEquals("young", ModelFiles.DESIGNS.load(file).getName());
    }

    @Test
    void fullDiskLeavesTheOldFileAndNothingElse() throws Exception {
        Path file = folder.resolve("a.design");
        Opened<Design> opened = ModelFiles.DESIGNS.create(named("old"), file);
        byte[] old = Files.readAllBytes(file);
        opened.model().setName("young");
        int refusals = 0;
        for (long budget = 0;; budget++) {
            ModelStore<Design> store = new ModelStore<>(FileKind.DESIGN, Design.class, new CutDisk(budget, false));
            try {
                store.save(opened);
                break;
            } catch (StoreException e) {
                assertEquals(Reason.NOT_WRITTEN, e.reason());
                assertEquals(file + ": cannot be written (No space left on device); check the folder, its permissions "
                        + "and the room on the disk, what was there before is unchanged.", e.getMessage());
                assertArrayEquals(old, Files.readAllBytes(file));
                assertTrue(names().stream().allMatch(List.of("a.design", ".a.design.last")::contains),
                        () -> "rubbish in " + folder);
                refusals++;
            }
        }
        assertTrue(refusals > old.length, refusals + " refusals");
        assertEquals("young", ModelFiles.DESIGNS.load(file).getName());
    }

    @Test
    void readOnlyFolder() throws Exception {
        Path file = folder.resolve("a.design");
        Opened<Design> opened = ModelFiles.DESIGNS.create(named("old"), file);
        ModelStore<Design> store = new ModelStore<>(FileKind.DESIGN, Design.class, new Disk() {
            @Override
            void create(Path saving, byte[] bytes) throws IOException {
                throw new AccessDeniedException(saving.toString());
            }
        });
        StoreException e = assertThrows(StoreException.class, () -> store.save(opened));
        assertTrue(e.getMessage().startsWith(file + ": cannot be written (access denied); "), e.getMessage());
        assertEquals(List.of("a.design"), names());
    }

    /** Somebody writes the file in the moment between the first look and the renaming of a new file. */
    @Test
    void aNameTakenAtTheLastMomentIsNotLost() throws Exception {
        Path file = folder.resolve("a.design");
        ModelStore<Design> store = new ModelStore<>(FileKind.DESIGN, Design.class, new Disk() {
            @Override
            void claim(Path from, Path to) throws IOException {
                Files.writeString(to, "theirs");
                super.claim(from, to);
            }
        });
        assertThrows(ChangedOnDiskException.class, () -> store.create(named("mine"), file));
        assertEquals("theirs", Files.readString(file));
        assertEquals(List.of("a.design"), names());
    }

    /** Saves on a disk that stops; true when it did. */
    private static boolean isCut(long budget, Opened<Design> opened) throws StoreException {
        try {
            new ModelStore<>(FileKind.DESIGN, Design.class, new CutDisk(budget, true)).save(opened);
            return false;
        } catch (Cut e) {
            return true;
        }
    }

    private static byte[] bytes(String name) throws StoreException {
        return ModelFiles.DESIGNS.write(named(name));
    }

    private static Design named(String name) {
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setName(name);
        return design;
    }

    private void empty() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        assertFalse(Files.exists(folder.resolve("a.design")));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
