/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.work;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Optional;
import org.pollex.model.store.ArtFiles;

/**
 * Keeps unsaved work apart from the user's files, so that it can be brought back after the program was killed. One copy
 * for each design, written whole or not at all, in a folder of the suite.
 */
public final class Recovery {

    private final Path folder;

    /** @param folder where the copies lie; made when it is missing */
    public Recovery(Path folder) {
        this.folder = folder;
    }

    /** Keeps the bytes of a design that is not saved. */
    public void keep(Path design, byte[] bytes) throws IOException {
        Files.createDirectories(folder);
        Path copy = copy(design);
        Path fresh = copy.resolveSibling(copy.getFileName() + ".new");
        Files.write(fresh, bytes);
        Files.move(fresh, copy, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** The bytes kept for a design; empty when there are none, or when the file holds the same. */
    public Optional<byte[]> kept(Path design) throws IOException {
        try {
            byte[] bytes = Files.readAllBytes(copy(design));
            if (Files.exists(design) && Arrays.equals(bytes, Files.readAllBytes(design))) {
                drop(design);
                return Optional.empty();
            }
            return Optional.of(bytes);
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
    }

    /** Throws the copy of a design away. */
    public void drop(Path design) throws IOException {
        Files.deleteIfExists(copy(design));
    }

    private Path copy(Path design) {
        String path = design.toAbsolutePath().normalize().toString();
        return folder.resolve(ArtFiles.sha256(path.getBytes(StandardCharsets.UTF_8)).substring(0, 32) + ".design");
    }
}
