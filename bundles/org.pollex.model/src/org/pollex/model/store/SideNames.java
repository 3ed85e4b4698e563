/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Names of the hidden files that saving puts beside a file: {@code .NAME.last}, the last good state, and
 * {@code .NAME.HOST-PROCESS-START-COUNT.saving}, one that is being written. The middle part tells which process writes
 * it, so that what a killed one left behind can be told from what a running one still needs. Very long names are
 * shortened to a beginning and a hash, so that the hidden name fits where the file's own name fits.
 */
final class SideNames {

    /** Bytes that a name may have on usual disks are 255; the additions take at most 70. */
    private static final int NAME_MAX = 180;
    private static final Pattern SAVING = Pattern.compile("([0-9a-f]{8})-(\\d{1,18})-(\\d{1,18})-(\\d{1,18})\\.saving");
    /** A file of another computer, whose processes cannot be asked, counts as left behind after this. */
    private static final Duration FOREIGN_AGE = Duration.ofDays(7);
    /** Milliseconds by which the start of one process may seem to differ. */
    private static final long CLOCK_DRIFT = 10_000;
    private static final AtomicLong COUNT = new AtomicLong();
    private static final String HOST = host();
    private static final String SELF = HOST + "-" + ProcessHandle.current().pid() + "-"
            + start(ProcessHandle.current());

    private SideNames() {
    }

    /** Where the last good state of a file is kept. */
    static Path last(Path file) {
        return file.resolveSibling("." + shortened(file) + ".last");
    }

    /** A name, never used before, to write beside a file. */
    static Path saving(Path file) {
        return file.resolveSibling("." + shortened(file) + "." + SELF + "-" + COUNT.incrementAndGet() + ".saving");
    }

    /** Files beside this one that processes left behind which are no longer there. */
    static List<Path> leftovers(Path file) throws IOException {
        String before = "." + shortened(file) + ".";
        List<Path> found = new ArrayList<>();
        try (Stream<Path> siblings = Files.list(file.toAbsolutePath().getParent())) {
            for (Path sibling : (Iterable<Path>) siblings::iterator) {
                String name = sibling.getFileName().toString();
                if (name.startsWith(before)) {
                    Matcher parts = SAVING.matcher(name.substring(before.length()));
                    if (parts.matches() && isLeft(sibling, parts)) {
                        found.add(sibling);
                    }
                }
            }
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        return found;
    }

    private static boolean isLeft(Path saving, Matcher parts) throws IOException {
        if (!parts.group(1).equals(HOST)) {
            Instant touched = Files.getLastModifiedTime(saving).toInstant();
            return touched.isBefore(Instant.now().minus(FOREIGN_AGE));
        }
        Optional<ProcessHandle> writer =
                ProcessHandle.of(Long.parseLong(parts.group(2))).filter(ProcessHandle::isAlive);
        if (writer.isEmpty()) {
            return true;
        }
        // A process whose start is hidden from us gets the benefit of the doubt, as does a clock that was set a little.
        long start = start(writer.get());
        return start != 0 && Math.abs(start - Long.parseLong(parts.group(3))) > CLOCK_DRIFT;
    }

    private static long start(ProcessHandle process) {
        return process.info().startInstant().map(Instant::toEpochMilli).orElse(0L);
    }

    private static String shortened(Path file) {
        String name = file.getFileName().toString();
        byte[] bytes = name.getBytes(StandardCharsets.UTF_8);
        if (bytes.length <= NAME_MAX) {
            return name;
        }
        return Names.cut(name, NAME_MAX - 17) + "~" + Hashes.sha256(bytes).substring(0, 16);
    }

    private static String host() {
        String name = System.getenv("COMPUTERNAME");
        if (name == null) {
            try {
                name = Files.readString(Path.of("/etc/hostname"), StandardCharsets.ISO_8859_1);
            } catch (IOException e) {
                name = String.valueOf(System.getenv("HOSTNAME"));
            }
        }
        return Hashes.sha256(name.getBytes(StandardCharsets.UTF_8)).substring(0, 8);
    }
}
