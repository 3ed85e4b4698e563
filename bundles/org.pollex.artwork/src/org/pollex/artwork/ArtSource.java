/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The bytes of an art file and the name to call it by in messages.
 *
 * @param name   as the user wrote it
 * @param bytes  whole content; not to be changed
 */
public record ArtSource(String name, byte[] bytes) {

    /**
     * Reads a file.
     *
     * @throws ArtException when it is missing, a folder, unreadable, empty or longer than {@code limits} allow
     */
    public static ArtSource of(Path file, ReadLimits limits) throws ArtException {
        String name = file.toString();
        if (!Files.exists(file)) {
            throw new ArtException(name, "the file does not exist; check the name and the folder");
        }
        if (Files.isDirectory(file)) {
            throw new ArtException(name, "this is a folder; name one art file inside it");
        }
        try {
            long size = Files.size(file);
            if (size == 0) {
                throw new ArtException(name, "the file is empty; ask the client to send it again");
            }
            if (size > limits.bytes()) {
                throw new ArtException(name, "the file has " + size + " bytes, more than the " + limits.bytes()
                        + " that art may have; simplify the art and export it again");
            }
            return new ArtSource(name, Files.readAllBytes(file));
        } catch (IOException e) {
            throw new ArtException(name, "the file cannot be read; check that you may open it", e);
        }
    }
}
