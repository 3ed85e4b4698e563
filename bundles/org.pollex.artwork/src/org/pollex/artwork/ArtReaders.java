/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;

/**
 * The readers that are there, and the way to read art of any kind: which reader takes a file is decided by its bytes,
 * never by its name. Readers that recognise the bytes are asked in order of falling priority; a reader that throws
 * {@link BeyondReaderException} passes the file on to the next one.
 */
public final class ArtReaders {

    /** The extension point that readers are contributed to. */
    public static final String EXTENSION_POINT = "org.pollex.artwork.readers";

    /**
     * A reader with what is known about it.
     *
     * @param id          unique name
     * @param name        name for people
     * @param priority    the higher, the earlier it is asked
     * @param extensions  file name extensions in lower case without a dot, for file choosers and messages
     * @param reader      reader itself
     */
    public record Entry(String id, String name, int priority, List<String> extensions, ArtReader reader) {
        public Entry {
            extensions = List.copyOf(extensions);
        }
    }

    private final List<Entry> entries;

    private ArtReaders(List<Entry> entries) {
        this.entries = entries;
    }

    /** Readers from plain objects. */
    public static ArtReaders of(List<Entry> entries) {
        List<Entry> sorted = new ArrayList<>(entries);
        sorted.sort(Comparator.comparingInt(Entry::priority).reversed());
        return new ArtReaders(List.copyOf(sorted));
    }

    /**
     * Readers contributed to the extension point. A contribution that cannot be used is skipped.
     *
     * @param broken  told one sentence about each contribution that was skipped, with the bundle it comes from
     */
    public static ArtReaders of(IExtensionRegistry registry, Consumer<String> broken) {
        List<Entry> found = new ArrayList<>();
        for (IConfigurationElement element : registry.getConfigurationElementsFor(EXTENSION_POINT)) {
            String from = element.getContributor().getName();
            String id = element.getAttribute("id");
            try {
                found.add(entry(element, id));
            } catch (CoreException | RuntimeException | LinkageError e) {
                broken.accept("The art reader " + (id == null ? "without an id" : id) + " of " + from
                        + " cannot be used: " + e.getMessage());
            }
        }
        return of(found);
    }

    private static Entry entry(IConfigurationElement element, String id) throws CoreException {
        if (id == null || id.isBlank()) {
            throw new IllegalArgumentException("it has no id");
        }
        String name = element.getAttribute("name");
        String priority = element.getAttribute("priority");
        String extensions = element.getAttribute("fileExtensions");
        int rank;
        try {
            rank = priority == null ? 0 : Integer.parseInt(priority.strip());
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("its priority \"" + priority + "\" is not a whole number", e);
        }
        List<String> endings = new ArrayList<>();
        for (String ending : (extensions == null ? "" : extensions).split("[,\\s]+")) {
            if (!ending.isBlank()) {
                endings.add(ending.toLowerCase(Locale.ROOT));
            }
        }
        Object made = element.createExecutableExtension("class");
        if (!(made instanceof ArtReader reader)) {
            throw new IllegalArgumentException("its class is not an art reader");
        }
        return new Entry(id, name == null ? id : name, rank, endings, reader);
    }

    /** All readers, the first asked first. */
    public List<Entry> entries() {
        return entries;
    }

    /** File name extensions of all readers, without repeats. */
    public List<String> fileExtensions() {
        return entries.stream().flatMap(e -> e.extensions().stream()).distinct().sorted().toList();
    }

    /**
     * Reads art.
     *
     * @throws ArtException when no reader knows the bytes, or the one that knows them refuses
     */
    public Art read(ArtSource source, ReadLimits limits) throws ArtException {
        if (source.bytes().length == 0) {
            throw new ArtException(source.name(), "the file is empty; ask the client to send it again");
        }
        if (source.bytes().length > limits.bytes()) {
            throw new ArtException(source.name(), "the file has " + source.bytes().length + " bytes, more than the "
                    + limits.bytes() + " that art may have; simplify the art and export it again");
        }
        BeyondReaderException beyond = null;
        for (Entry entry : entries) {
            if (!entry.reader().recognises(source)) {
                continue;
            }
            try {
                return entry.reader().read(source, limits);
            } catch (BeyondReaderException e) {
                beyond = e;
            } catch (StackOverflowError | OutOfMemoryError e) {
                throw new ArtException(source.name(),
                        "the art is too heavy to be read; simplify it and export it again", e);
            } catch (RuntimeException e) {
                throw new ArtException(source.name(), "the art cannot be understood (" + e.getClass().getSimpleName()
                        + "); open it in a drawing program and export it again", e);
            }
        }
        if (beyond != null) {
            throw beyond;
        }
        throw new ArtException(source.name(), UnknownFile.reason(source, fileExtensions()));
    }
}
