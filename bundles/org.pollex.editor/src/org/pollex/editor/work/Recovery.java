/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.work;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Optional;
import org.pollex.model.store.ArtFiles;

/**
 * Keeps unsaved work apart from the user's files, so that it can be brought back after the program was killed. One copy
 * for each design, written whole or not at all, in a folder of the suite. A copy that was offered and not decided upon
 * is set aside, so that work which begins meanwhile does not take its place.
 */
public final class Recovery {

    private static final String HEAD = "unsaved design 1";
    private static final String ASIDE = "-aside";
    private static final int LINES = 4;

    private final Path folder;

    /**
     * Work that was kept.
     *
     * @param base   SHA-256 of the file that the work began from, lower-case hex; empty when there was no file
     * @param when   when it was kept
     * @param bytes  the design
     */
    public record Kept(String base, Instant when, byte[] bytes) {
    }

    /** @param folder where the copies lie; made when it is missing */
    public Recovery(Path folder) {
        this.folder = folder;
    }

    /** Keeps the bytes of a design that is not saved; {@code base} as in {@link Kept}. */
    public void keep(Path design, String base, byte[] bytes) throws IOException {
        Files.createDirectories(folder);
        Path copy = copy(design, "");
        Path fresh = copy.resolveSibling(copy.getFileName() + ".new");
        ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length + 300);
        String head = String.join("\n", HEAD, design.toUri().toString(), base, Instant.now().toString()) + "\n";
        out.write(head.getBytes(StandardCharsets.UTF_8));
        out.write(bytes);
        try (FileChannel file = FileChannel.open(fresh, StandardOpenOption.CREATE, StandardOpenOption.WRITE,
                StandardOpenOption.TRUNCATE_EXISTING)) {
            Channels.newOutputStream(file).write(out.toByteArray());
            file.force(true);
        }
        Files.move(fresh, copy, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** What is kept for a design, the newest; empty when there is nothing, or when the file holds the same. */
    public Optional<Kept> kept(Path design) throws IOException {
        for (String slot : new String[] {"", ASIDE}) {
            Optional<Kept> kept = read(copy(design, slot));
            if (kept.isPresent()) {
                if (!Files.exists(design) || !Arrays.equals(kept.get().bytes(), Files.readAllBytes(design))) {
                    return kept;
                }
                Files.deleteIfExists(copy(design, slot));
            }
        }
        return Optional.empty();
    }

    private static Optional<Kept> read(Path copy) throws IOException {
        byte[] all;
        try {
            all = Files.readAllBytes(copy);
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
        String[] head = new String[LINES];
        int from = 0;
        for (int line = 0; line < LINES; line++) {
            int end = from;
            while (end < all.length && all[end] != '\n') {
                end++;
            }
            head[line] = new String(all, from, end - from, StandardCharsets.UTF_8);
            from = Math.min(end + 1, all.length);
        }
        try {
            return HEAD.equals(head[0])
                    ? Optional.of(new Kept(head[2], Instant.parse(head[3]), Arrays.copyOfRange(all, from, all.length)))
                    : Optional.empty();
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** Makes room for new work on a design; what was kept is still offered the next time. */
    public void setAside(Path design) throws IOException {
        Path copy = copy(design, "");
        if (Files.exists(copy)) {
            Files.move(copy, copy(design, ASIDE), StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Throws the copy of a design away, but not what was set aside. */
    public void drop(Path design) throws IOException {
        Files.deleteIfExists(copy(design, ""));
    }

    /** Throws away what was set aside. */
    public void dropAside(Path design) throws IOException {
        Files.deleteIfExists(copy(design, ASIDE));
    }

    private Path copy(Path design, String slot) {
        String path = design.toAbsolutePath().normalize().toString();
        return folder.resolve(ArtFiles.sha256(path.getBytes(StandardCharsets.UTF_8)).substring(0, 32) + slot
                + ".unsaved");
    }
}
