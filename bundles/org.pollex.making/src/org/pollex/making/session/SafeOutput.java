/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.session;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * Writes result files: whole or not at all. The bytes go to a file beside, reach the disk, and take the name in one
 * step; until then whatever had the name stays as it is. A link is followed, so that it stays a link.
 */
public final class SafeOutput {

    private SafeOutput() {
    }

    /**
     * Writes a file over whatever is there. Folders on the way that do not exist are made, and removed again when the
     * file cannot be written.
     *
     * @param shown  the file as the user sees it
     * @throws Refusal with {@link ExitCode#NOT_WRITTEN} when it cannot be written; nothing of it is left
     */
    public static void write(Path named, String shown, byte[] bytes) throws Refusal {
        if (Files.isDirectory(named)) {
            throw new Refusal(ExitCode.NOT_WRITTEN, shown + ": this is a folder; name a file inside it.");
        }
        NewFolders folders = new NewFolders();
        Path beside = null;
        boolean done = false;
        try {
            Path file = Files.isSymbolicLink(named) ? named.toRealPath() : named.toAbsolutePath();
            folders.make(file.getParent());
            if (Files.exists(file) && !Files.isWritable(file)) {
                throw new AccessDeniedException(shown, null, "the file is write-protected");
            }
            beside = file.resolveSibling(".pollex-" + UUID.randomUUID() + ".saving");
            try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.CREATE_NEW,
                    StandardOpenOption.WRITE)) {
                ByteBuffer buffer = ByteBuffer.wrap(bytes);
                while (buffer.hasRemaining()) {
                    channel.write(buffer);
                }
                channel.force(true);
            }
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            done = true;
        } catch (IOException | SecurityException e) {
            throw new Refusal(ExitCode.NOT_WRITTEN, shown + ": cannot be written (" + reason(e)
                    + "); check the folder, its permissions and the room on the disk.", e);
        } finally {
            if (!done) {
                remove(beside);
                folders.undo();
            }
        }
    }

    /** Removes a file as far as that is possible; used on the way out of a failure that is told already. */
    public static void remove(Path file) {
        try {
            if (file != null) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            // The failure that led here is the one to tell; a leftover beside it changes nothing for the user.
            file.toFile().deleteOnExit();
        }
    }

    /** What the system says, without the path that the message has already. */
    public static String reason(Exception e) {
        if (e instanceof AccessDeniedException denied) {
            return denied.getReason() == null ? "access denied" : denied.getReason();
        }
        if (e instanceof NoSuchFileException) {
            return "the folder is not there";
        }
        if (e instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        return e instanceof FileSystemException || e.getMessage() == null ? e.getClass().getSimpleName()
                : e.getMessage();
    }
}
