/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.desk;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtReaders;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.model.store.ArtFiles;

/**
 * Reads art and keeps what was read last, by content: many designs of one client share their art, and two threads that
 * want the same art read it once. Safe for threads.
 */
final class ArtShelf {

    /** How many pieces are kept; enough for neighbours in a folder, few enough for a small heap. */
    private static final int KEPT = 48;

    private final ReadLimits limits = ReadLimits.usual();
    private final ArtReaders readers;
    private final Map<String, FutureTask<Art>> shelf = new LinkedHashMap<>(KEPT * 2, 0.75f, true) {

        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, FutureTask<Art>> eldest) {
            return size() > KEPT;
        }
    };

    ArtShelf(ArtReaders readers) {
        this.readers = readers;
    }

    /**
     * Reads a file.
     *
     * @param shown  what messages call it
     */
    Art art(Path file, String shown) throws Refusal {
        ArtSource source;
        try {
            source = new ArtSource(shown, ArtSource.of(file, limits).bytes());
        } catch (ArtException e) {
            throw new Refusal(ExitCode.UNREADABLE, e.getMessage().replace(file.toString(), shown), e);
        }
        FutureTask<Art> task;
        synchronized (shelf) {
            task = shelf.computeIfAbsent(ArtFiles.sha256(source.bytes()),
                    hash -> new FutureTask<>(() -> readers.read(source, limits)));
        }
        task.run();
        try {
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refusal(ExitCode.UNREADABLE, shown + ": the call was told to stop while reading it.", e);
        } catch (ExecutionException e) {
            synchronized (shelf) {
                // The next one is to be told under its own name.
                shelf.values().remove(task);
            }
            if (e.getCause() instanceof ArtException refused) {
                throw new Refusal(ExitCode.UNREADABLE, refused.getMessage(), refused);
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
