/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/**
 * The few things that saving does to a disk, one method each, so that a test can cut them short at any byte. This class
 * does them for real.
 */
class Disk {

    /** Creates a file that must not exist, with these bytes, and waits until they have reached the disk. */
    void create(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    /** Gives a file the permissions of another one, where the system knows such a thing. */
    void likePermissions(Path file, Path model) throws IOException {
        PosixFileAttributeView from = Files.getFileAttributeView(model, PosixFileAttributeView.class);
        PosixFileAttributeView to = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        if (from != null && to != null) {
            to.setPermissions(from.readAttributes().permissions());
        }
    }

    /** Puts a file in the place of another one of the same folder in a single step. */
    void rename(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Gives a file its name, which must be free, in a single step where the system can link files. */
    void claim(Path from, Path to) throws IOException {
        try {
            Files.createLink(to, from);
        } catch (UnsupportedOperationException e) {
            Files.move(from, to);
            return;
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (FileSystemException e) {
            // Some disks, such as FAT sticks, have no links.
            Files.move(from, to);
            return;
        }
        Files.delete(from);
    }

    /** Waits until the names in a folder have reached the disk; does nothing where a folder cannot be opened. */
    void flushFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Windows opens no folders and keeps names safe by itself; the bytes were flushed already.
            return;
        }
    }

    /** Removes a file if it is there. */
    void delete(Path file) throws IOException {
        Files.deleteIfExists(file);
    }
}
