/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.session;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;

/** Folders that a call made, so that it can take them away again when it fails. Only empty ones are taken away. */
public final class NewFolders {

    private final Deque<Path> made = new ArrayDeque<>();

    /** Makes a folder and those above it that are missing. */
    public void make(Path folder) throws IOException {
        if (folder == null || Files.isDirectory(folder)) {
            return;
        }
        make(folder.getParent());
        try {
            Files.createDirectory(folder);
            made.push(folder);
        } catch (FileAlreadyExistsException e) {
            if (!Files.isDirectory(folder)) {
                throw new IOException("what should be its folder is a file", e);
            }
        }
    }

    /** Takes the folders away that are still empty. */
    public void undo() {
        while (!made.isEmpty()) {
            SafeOutput.remove(made.pop());
        }
    }
}
