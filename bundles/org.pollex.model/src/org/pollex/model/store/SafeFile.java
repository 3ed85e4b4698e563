/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Optional;
import org.pollex.model.store.StoreException.Reason;

/**
 * Reads and replaces whole files such that a kill, a full disk or a power cut at any moment leaves the old file or the
 * new one, never a part. The new content is written beside the file and flushed; the old content, when it was good, is
 * put in {@link SideNames#last}; then the new file takes the name in one step and the folder is flushed.
 *
 * <p>Known limit: between the last look at the old file and the renaming lies a moment in which another program's
 * change would go unseen.
 */
final class SafeFile {

    /** Decides whether bytes are a whole and readable file. */
    interface Judge {
        boolean isGood(byte[] bytes);
    }

    private final Disk disk;
    private final FileKind kind;

    SafeFile(Disk disk, FileKind kind) {
        this.disk = disk;
        this.kind = kind;
    }

    /** Reads a file; empty when there is none. */
    Optional<byte[]> read(Path file) throws StoreException {
        try {
            if (Files.isDirectory(file)) {
                throw new StoreException(Reason.NOT_A_FILE, file.toString(),
                        "this is a folder; name a file that ends in ." + kind.ending() + ".");
            }
            if (Files.exists(file) && !Files.isRegularFile(file)) {
                throw new StoreException(Reason.NOT_A_FILE, file.toString(),
                        "this is a device or pipe, not a file; name a file that ends in ." + kind.ending() + ".");
            }
            try (InputStream in = Files.newInputStream(file)) {
                byte[] bytes = in.readNBytes(XmlSource.BYTES_MAX + 1);
                if (bytes.length > XmlSource.BYTES_MAX) {
                    throw XmlSource.tooLarge(file.toString(), kind);
                }
                return Optional.of(bytes);
            }
        } catch (NoSuchFileException e) {
            return Optional.empty();
        } catch (IOException | SecurityException e) {
            throw new StoreException(Reason.UNREADABLE, file, "cannot be read (" + reason(e)
                    + "); check the permissions and the disk.", e);
        }
    }

    /**
     * Writes a file.
     *
     * @param expected  what the file must be at this moment; empty to replace whatever is there
     */
    Stamp write(Path named, byte[] bytes, Optional<Stamp> expected, Judge judge) throws StoreException {
        Path file = real(named);
        Path saving = SideNames.saving(file);
        Path keeping = SideNames.saving(file);
        try {
            try {
                clean(file);
                disk.create(saving, bytes);
                Optional<byte[]> old = read(file);
                Stamp present = old.map(Stamp::of).orElse(Stamp.ABSENT);
                if (expected.isPresent() && !expected.get().equals(present)) {
                    throw changed(named, expected.get(), present);
                }
                if (old.isPresent()) {
                    if (!Files.isWritable(file)) {
                        throw new AccessDeniedException(file.toString(), null, "the file is write-protected");
                    }
                    disk.likePermissions(saving, file);
                    if (judge.isGood(old.get())) {
                        disk.create(keeping, old.get());
                        disk.likePermissions(keeping, file);
                        disk.rename(keeping, SideNames.last(file));
                    }
                    disk.rename(saving, file);
                } else if (expected.isPresent()) {
                    disk.claim(saving, file);
                } else {
                    disk.rename(saving, file);
                }
                disk.flushFolder(file.toAbsolutePath().getParent());
                return Stamp.of(bytes);
            } finally {
                disk.delete(saving);
                disk.delete(keeping);
            }
        } catch (StoreException e) {
            if (e.reason() == Reason.UNREADABLE && e.getCause() instanceof IOException cause) {
                throw notWritten(named, cause);
            }
            throw e;
        } catch (FileAlreadyExistsException e) {
            throw changed(named, Stamp.ABSENT, new Stamp(0, ""));
        } catch (IOException | SecurityException e) {
            throw notWritten(named, e);
        }
    }

    private static StoreException notWritten(Path file, Exception e) {
        return new StoreException(Reason.NOT_WRITTEN, file, "cannot be written (" + reason(e)
                + "); check the folder, its permissions and the room on the disk, what was there before is unchanged.",
                e);
    }

    /** Removes what killed processes left beside a file. */
    void clean(Path file) throws IOException {
        for (Path leftover : SideNames.leftovers(file)) {
            disk.delete(leftover);
        }
    }

    private static Path real(Path file) throws StoreException {
        try {
            return Files.isSymbolicLink(file) ? file.toRealPath() : file;
        } catch (IOException e) {
            throw new StoreException(Reason.NOT_WRITTEN, file,
                    "is a link to a file that is not there; remove the link or save under another name.", e);
        }
    }

    private static ChangedOnDiskException changed(Path file, Stamp expected, Stamp present) {
        if (present.equals(Stamp.ABSENT)) {
            return new ChangedOnDiskException(file,
                    "was removed from the disk since it was opened; save it as a new file if it is still wanted.");
        }
        return new ChangedOnDiskException(file, expected.equals(Stamp.ABSENT)
                ? "is there already; choose another name, or say that it may be replaced."
                : "was changed on disk since it was opened; open it again, or say that it may be replaced.");
    }

    /** What the system says, without the path that the message has already. */
    static String reason(Exception e) {
        if (e instanceof AccessDeniedException denied) {
            return denied.getReason() == null ? "access denied" : denied.getReason();
        }
        if (e instanceof NoSuchFileException) {
            return "the folder is not there";
        }
        if (e instanceof NotDirectoryException) {
            return "what should be its folder is a file";
        }
        if (e instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        return e instanceof FileSystemException || e.getMessage() == null ? e.getClass().getSimpleName()
                : e.getMessage();
    }
}
