/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.impl.ResourceImpl;
import org.pollex.model.store.StoreException.Reason;

/**
 * Opens and saves the files of one kind. It needs no OSGi, keeps no state and may be used by many threads at once, each
 * with its own models; two threads that save the same file are told apart by the stamp like two people.
 *
 * <p>An older file is migrated in memory and stays as it is until it is saved. A newer one is refused. A save leaves
 * the old file or the new one, whatever happens, and keeps the last good state as {@code .NAME.last} beside the file.
 * Models hold no links between files: a design names its product and inks by id, so it opens whether or not the
 * catalogue knows them.
 *
 * @param <T> the root of the model
 */
public final class ModelStore<T extends EObject> {

    private final FileKind kind;
    private final Class<T> type;
    private final SafeFile files;

    ModelStore(FileKind kind, Class<T> type, Disk disk) {
        this.kind = kind;
        this.type = type;
        this.files = new SafeFile(disk, kind);
    }

    /** The kind of file. */
    public FileKind kind() {
        return kind;
    }

    /** The type of the root. */
    public Class<T> type() {
        return type;
    }

    /**
     * Opens a file for reading and later saving.
     *
     * @throws StoreException when it is missing, no such file, damaged or newer; when the last good state is there, the
     *         message names it, and {@link #recover(Path)} opens it
     */
    public Opened<T> open(Path file) throws StoreException {
        byte[] bytes = files.read(file).orElseThrow(() -> missing(file));
        try {
            return parse(bytes, file);
        } catch (StoreException e) {
            if (e.reason() == Reason.DAMAGED) {
                Optional<Path> last = lastGood(file);
                if (last.isPresent()) {
                    String said = e.getMessage().substring(Quoted.clean(e.file()).length() + 2);
                    throw new StoreException(Reason.DAMAGED, file, said.substring(0, said.length() - 1)
                            + " (the last good state is beside it: " + last.get().getFileName() + ").", e);
                }
            }
            throw e;
        }
    }

    /**
     * Opens a file that holds something its format does not know, without that; a save would lose it.
     *
     * @param leftOut  takes for each unknown thing its place and what it is, without a full stop
     * @throws StoreException as {@link #open(Path)} does for any other reason
     */
    public Opened<T> openWithout(Path file, List<String> leftOut) throws StoreException {
        byte[] bytes = files.read(file).orElseThrow(() -> missing(file));
        return parse(bytes, file, ModelReader.without(file.toString(), kind, leftOut));
    }

    /**
     * Opens a file to be edited although marks in it may be of kinds that its format does not know: these are kept,
     * neither print nor can be checked, and are written as they were by a save.
     *
     * @throws StoreException as {@link #open(Path)} does for any other reason
     */
    public Opened<T> openKeeping(Path file) throws StoreException {
        byte[] bytes = files.read(file).orElseThrow(() -> missing(file));
        try {
            return parse(bytes, file);
        } catch (StoreException e) {
            if (e.reason() == Reason.UNKNOWN_CONTENT) {
                return parse(bytes, file, ModelReader.keeping(file.toString(), kind));
            }
            // says also whether a last good copy is there
            return open(file);
        }
    }

    private static StoreException missing(Path file) {
        return new StoreException(Reason.MISSING, file.toString(),
                "there is no such file; check the name and the folder.");
    }

    /**
     * The model in a file, when it will not be saved again. Its resource has the address of the file, so that what is
     * named relative to it can be found.
     */
    public T load(Path file) throws StoreException {
        T model = open(file).model();
        new ResourceImpl(URI.createFileURI(file.toAbsolutePath().toString())).getContents().add(model);
        return model;
    }

    /**
     * Reads a model from a stream, such as data inside a bundle. The caller closes the stream.
     *
     * @param name  what messages call it
     */
    public T read(InputStream in, String name) throws StoreException {
        return read(in, name, ModelReader.strict(name, kind));
    }

    /**
     * Reads a model from a stream as {@link #openKeeping(Path)} opens a file. The caller closes the stream.
     *
     * @param name  what messages call it
     */
    public T readKeeping(InputStream in, String name) throws StoreException {
        return read(in, name, ModelReader.keeping(name, kind));
    }

    private T read(InputStream in, String name, ModelReader reader) throws StoreException {
        try {
            byte[] bytes = in.readNBytes(XmlSource.BYTES_MAX + 1);
            XmlElement root = root(bytes, name);
            Migrations.apply(root, name, kind);
            return type.cast(reader.read(root));
        } catch (IOException e) {
            throw new StoreException(Reason.UNREADABLE, name, "cannot be read (" + SafeFile.reason(e)
                    + "); check that it is there.", e);
        }
    }

    /**
     * The bytes that a save would write: XMI in UTF-8, the same for the same model. Sets the format of the model and
     * gives an id to each layer and mark without one, or with one that is taken.
     *
     * @throws StoreException when the model holds a value that no file can hold
     */
    public byte[] write(T model) throws StoreException {
        return ModelWriter.write(model, "the " + kind.word(), kind);
    }

    /**
     * Writes a new file.
     *
     * @throws ChangedOnDiskException when there is a file of that name; nothing was written
     */
    public Opened<T> create(T model, Path file) throws StoreException {
        return save(model, file, Optional.of(Stamp.ABSENT));
    }

    /**
     * Writes the model back to the file that it was opened from.
     *
     * @return the same model with the new stamp, for the next save
     * @throws ChangedOnDiskException when the file is not the one that was opened; nothing was written
     */
    public Opened<T> save(Opened<T> opened) throws StoreException {
        return save(opened.model(), opened.path(), Optional.of(opened.stamp()));
    }

    /** Writes the model over whatever the file holds; the person was asked. */
    public Opened<T> replace(T model, Path file) throws StoreException {
        return save(model, file, Optional.empty());
    }

    /** True when a save would meet a file that is not the one that was opened. */
    public boolean changedOnDisk(Opened<T> opened) throws StoreException {
        return !files.read(opened.path()).map(Stamp::of).orElse(Stamp.ABSENT).equals(opened.stamp());
    }

    /** The last good state that saving kept beside a file, when it is there and can be read. */
    public Optional<Path> lastGood(Path file) throws StoreException {
        if (file.getFileName() == null) {
            return Optional.empty();
        }
        Path last = SideNames.last(file);
        try {
            return files.read(last).filter(this::isGood).map(bytes -> last);
        } catch (StoreException e) {
            return Optional.empty();
        }
    }

    /**
     * Opens the last good state in place of a damaged or lost file. The damaged file stays until the result is saved.
     *
     * @throws StoreException when there is no last good state
     */
    public Opened<T> recover(Path file) throws StoreException {
        Path last = lastGood(file).orElseThrow(() -> new StoreException(Reason.MISSING, file.toString(),
                "no good state was kept beside it; restore it from a copy."));
        Opened<T> good = open(last);
        Stamp present = files.read(file).map(Stamp::of).orElse(Stamp.ABSENT);
        return new Opened<>(file, good.model(), present, good.format());
    }

    /** Removes what killed processes left beside a file while they saved it. What a running one writes stays. */
    public void clean(Path file) throws StoreException {
        try {
            files.clean(file);
        } catch (IOException e) {
            throw new StoreException(Reason.NOT_WRITTEN, file, "what a broken save left beside it cannot be removed ("
                    + SafeFile.reason(e) + "); check the permissions of the folder.", e);
        }
    }

    private Opened<T> save(T model, Path file, Optional<Stamp> expected) throws StoreException {
        if (FileKind.of(file).orElse(null) != kind) {
            throw new StoreException(Reason.NOT_A_FILE, file.toString(), "the name of a " + kind.word()
                    + " ends in ." + kind.ending() + "; give it that ending.");
        }
        byte[] bytes = ModelWriter.write(model, file.toString(), kind);
        return new Opened<>(file, model, files.write(file, bytes, expected, this::isGood), kind.format());
    }

    private boolean isGood(byte[] bytes) {
        try {
            parse(bytes, Path.of(kind.word()), ModelReader.keeping(kind.word(), kind));
            return true;
        } catch (StoreException e) {
            // A newer file is whole, although not for us.
            return e.reason() == Reason.NEWER;
        }
    }

    private Opened<T> parse(byte[] bytes, Path file) throws StoreException {
        return parse(bytes, file, ModelReader.strict(file.toString(), kind));
    }

    private Opened<T> parse(byte[] bytes, Path file, ModelReader reader) throws StoreException {
        XmlElement root = root(bytes, file.toString());
        int format = Migrations.apply(root, file.toString(), kind);
        T model = type.cast(reader.read(root));
        return new Opened<>(file, model, Stamp.of(bytes), format);
    }

    private XmlElement root(byte[] bytes, String file) throws StoreException {
        XmlElement root = XmlSource.read(bytes, file, kind);
        if (isRoot(root, kind)) {
            return root;
        }
        for (FileKind other : FileKind.values()) {
            if (isRoot(root, other)) {
                throw new StoreException(Reason.WRONG_KIND, file, "holds a " + other.word() + ", not a " + kind.word()
                        + "; if that is meant, its name ends in ." + other.ending() + ".");
            }
        }
        throw new StoreException(Reason.WRONG_KIND, file, "begins with <" + Quoted.clean(root.name())
                + ">, which is no " + kind.word() + " of Pollex; check that it is the right file.");
    }

    private static boolean isRoot(XmlElement root, FileKind kind) {
        return root.name().equals(kind.root().getName())
                && root.namespace().equals(kind.root().getEPackage().getNsURI());
    }
}
