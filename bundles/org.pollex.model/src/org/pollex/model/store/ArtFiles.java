/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pollex.model.design.Placement;
import org.pollex.model.store.StoreException.Reason;

/**
 * Brings a client's file beside a design and finds it again. The copy in {@code art/} is byte for byte the client's and
 * is never edited; a file of the same content is used again, one of the same name and other content gets a number.
 * Names keep their letters of any script; what other systems refuse becomes an underscore, and a name is cut to 150
 * bytes.
 */
public final class ArtFiles {

    /** Folder of the copies, beside the design. */
    public static final String FOLDER = "art";

    private static final int NAME_MAX = 150;
    private static final Disk DISK = new Disk();

    private ArtFiles() {
    }

    /**
     * Copies a client's file into {@code art/} beside a design, unless its content is there already under that name.
     *
     * @param design  path of the design, which need not be there yet; its folder must be
     * @param art     the client's file
     * @throws StoreException when the file cannot be read or the copy cannot be written; nothing half-written is left
     */
    public static ArtFile adopt(Path design, Path art) throws StoreException {
        return adopt(design.toAbsolutePath().resolveSibling(FOLDER), FOLDER + "/", art);
    }

    /**
     * The same for a picture that belongs to a catalogue: the copy lies beside the catalogue itself.
     *
     * @param catalogue  path of the catalogue, which need not be there yet; its folder must be
     */
    public static ArtFile adoptBeside(Path catalogue, Path picture) throws StoreException {
        return adopt(catalogue.toAbsolutePath().getParent(), "", picture);
    }

    private static ArtFile adopt(Path folder, String prefix, Path art) throws StoreException {
        if (Files.isDirectory(art)) {
            throw new StoreException(Reason.NOT_A_FILE, art.toString(), "this is a folder; name a file of art.");
        }
        if (!Files.exists(art)) {
            throw new StoreException(Reason.MISSING, art.toString(),
                    "there is no such file; check the name and the folder.");
        }
        if (!Files.isRegularFile(art)) {
            throw new StoreException(Reason.NOT_A_FILE, art.toString(),
                    "this is a device or pipe, not a file; name a file of art.");
        }
        try {
            Optional<ArtFile> own = own(folder, prefix, art);
            return own.isPresent() ? own.get() : copy(folder, prefix, art);
        } catch (IOException e) {
            throw new StoreException(Reason.NOT_WRITTEN, folder, "the copy of "
                    + Quoted.of(art.getFileName().toString()) + " cannot be written (" + SafeFile.reason(e)
                    + "); check the folder, its permissions and the room on the disk.", e);
        }
    }

    /**
     * Finds the art of a placement and compares it with what was placed. A placement without a hash takes whatever is
     * there.
     *
     * @param design  path of the design
     */
    public static ArtState state(Path design, Placement placement) {
        String named = placement.getArt() == null ? "" : placement.getArt();
        Optional<Path> inside = inside(design, named);
        if (inside.isEmpty()) {
            return new ArtState.Refused(Quoted.clean(design.toString()) + ": art " + Quoted.of(named)
                    + " is no path inside the folder of the design; copy the file into " + FOLDER + "/ and place it "
                    + "from there.");
        }
        Path file = inside.get();
        if (!Files.isRegularFile(file)) {
            return new ArtState.Missing(Quoted.clean(design.toString()) + ": art " + Quoted.of(named)
                    + " is missing; put it back or place it anew.");
        }
        try {
            String sha256 = sha256(file);
            if (placement.getSha256() == null || placement.getSha256().equals(sha256)) {
                return new ArtState.Present(file);
            }
            return new ArtState.Changed(file, sha256, Quoted.clean(design.toString()) + ": art " + Quoted.of(named)
                    + " is not the file that was placed; put that one back or place it anew.");
        } catch (StoreException e) {
            return new ArtState.Missing(e.getMessage());
        }
    }

    /**
     * The file that a relative path names, when it lies in the folder of the design or below.
     *
     * @return empty for an absolute path, one that climbs out, also by a link, or one that is no path at all
     */
    public static Optional<Path> inside(Path design, String path) {
        if (path.isBlank() || path.indexOf('\\') >= 0 || path.startsWith("/") || path.matches("[A-Za-z][\\w+.-]*:.*")) {
            return Optional.empty();
        }
        try {
            Path folder = design.toAbsolutePath().normalize().getParent();
            Path file = folder.resolve(path).normalize();
            if (!file.startsWith(folder) || file.equals(folder)) {
                return Optional.empty();
            }
            if (Files.exists(file) && !file.toRealPath().startsWith(folder.toRealPath())) {
                return Optional.empty();
            }
            return Optional.of(file);
        } catch (InvalidPathException | IOException e) {
            return Optional.empty();
        }
    }

    /** SHA-256 of a file, lower-case hex. */
    public static String sha256(Path file) throws StoreException {
        MessageDigest digest = Hashes.digest();
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            in.transferTo(OutputStream.nullOutputStream());
        } catch (IOException e) {
            throw new StoreException(Reason.UNREADABLE, file, "cannot be read (" + SafeFile.reason(e)
                    + "); check the permissions and the disk.", e);
        }
        return Hashes.hex(digest.digest());
    }

    /** SHA-256 of bytes, lower-case hex. */
    public static String sha256(byte[] bytes) {
        return Hashes.sha256(bytes);
    }

    /** A file that lies in the art folder already stays where it is. */
    private static Optional<ArtFile> own(Path folder, String prefix, Path art) throws StoreException, IOException {
        if (!Files.isDirectory(folder) || !art.toRealPath().startsWith(folder.toRealPath())) {
            return Optional.empty();
        }
        Path below = folder.toRealPath().relativize(art.toRealPath());
        List<String> parts = new ArrayList<>();
        below.forEach(part -> parts.add(part.toString()));
        return Optional.of(new ArtFile(prefix + String.join("/", parts), sha256(art)));
    }

    private static ArtFile copy(Path folder, String prefix, Path art) throws IOException, StoreException {
        boolean fresh = !Files.isDirectory(folder);
        if (fresh) {
            Files.createDirectory(folder);
        }
        boolean done = false;
        try {
            ArtFile copied = copyInto(folder, prefix, art);
            done = true;
            return copied;
        } finally {
            if (fresh && !done) {
                removeEmpty(folder);
            }
        }
    }

    private static void removeEmpty(Path folder) throws IOException {
        try {
            DISK.delete(folder);
        } catch (DirectoryNotEmptyException e) {
            // Another process copied something into it meanwhile, so it stays.
            return;
        }
    }

    private static ArtFile copyInto(Path folder, String prefix, Path art) throws IOException, StoreException {
        String wanted = Names.portable(art.getFileName().toString(), NAME_MAX);
        for (Path leftover : SideNames.leftovers(folder.resolve(wanted))) {
            DISK.delete(leftover);
        }
        Path saving = SideNames.saving(folder.resolve(wanted));
        try {
            String sha256 = write(art, saving);
            for (int number = 1;; number++) {
                String name = number == 1 ? wanted : Names.numbered(wanted, number);
                Optional<String> taken = taken(folder, name);
                if (taken.isPresent()) {
                    Path present = folder.resolve(taken.get());
                    if (Files.isRegularFile(present) && sha256(present).equals(sha256)) {
                        return new ArtFile(prefix + taken.get(), sha256);
                    }
                    continue;
                }
                try {
                    DISK.claim(saving, folder.resolve(name));
                } catch (FileAlreadyExistsException e) {
                    // Another process took the name since; compare with its file.
                    number--;
                    continue;
                }
                DISK.flushFolder(folder);
                return new ArtFile(prefix + name, sha256);
            }
        } finally {
            Files.deleteIfExists(saving);
        }
    }

    private static String write(Path art, Path saving) throws IOException, StoreException {
        MessageDigest digest = Hashes.digest();
        try (FileChannel out = FileChannel.open(saving, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
                InputStream in = new DigestInputStream(open(art), digest)) {
            in.transferTo(Channels.newOutputStream(out));
            out.force(true);
        }
        return Hashes.hex(digest.digest());
    }

    private static InputStream open(Path art) throws StoreException {
        try {
            return Files.newInputStream(art);
        } catch (IOException e) {
            throw new StoreException(Reason.UNREADABLE, art, "cannot be read (" + SafeFile.reason(e)
                    + "); check the permissions and the disk.", e);
        }
    }

    /** The name in the folder that is this one on a system that does not tell capitals. */
    private static Optional<String> taken(Path folder, String name) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).filter(each -> Names.clash(each, name))
                    .sorted((one, other) -> Boolean.compare(other.equals(name), one.equals(name))).findFirst();
        }
    }
}
