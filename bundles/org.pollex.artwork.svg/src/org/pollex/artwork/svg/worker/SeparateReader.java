/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.worker;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;

import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtReader;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.BeyondReaderException;
import org.pollex.artwork.ReadLimits;
import org.pollex.artwork.svg.gate.SvgGate;

/**
 * Reads SVG in a separate process of at most {@value #MEGABYTES} MB, ended after the limit on time. The second reader:
 * it takes what the reader of the common subset leaves, such as compressed files, files with entities of their own,
 * and all that only Batik knows. Whatever happens to that process, the caller gets art or one sentence.
 * <p>
 * The process is kept for further files and ends with this one, when idle for a minute, or on {@link #close()}.
 */
public final class SeparateReader implements ArtReader, AutoCloseable {

    private static final int MEGABYTES = 256;
    private static final int MOST_PROCESSES = 2;

    private final WorkerPool pool;

    /** With the usual memory and one process for each core up to {@value #MOST_PROCESSES}. */
    public SeparateReader() {
        this(MEGABYTES);
    }

    /** @param megabytes  most memory of a process */
    public SeparateReader(int megabytes) {
        pool = new WorkerPool(Math.min(MOST_PROCESSES, Runtime.getRuntime().availableProcessors()), megabytes);
    }

    @Override
    public boolean recognises(ArtSource source) {
        return SvgGate.looksLikeSvg(source.bytes());
    }

    @Override
    public Art read(ArtSource source, ReadLimits limits) throws ArtException {
        byte[] answer = pool.ask(source, limits);
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(answer))) {
            int kind = in.readByte();
            if (kind == WorkerMain.ART) {
                return ArtWire.read(in);
            }
            String said = ArtWire.text(in);
            if (kind == WorkerMain.BEYOND) {
                throw new BeyondReaderException(source.name(), said);
            }
            String reason = said.startsWith(source.name() + ": ") ? said.substring(source.name().length() + 2) : said;
            throw new ArtException(source.name(), reason.replaceFirst("\\.$", ""));
        } catch (IOException | RuntimeException e) {
            throw new ArtException(source.name(),
                    "what was read came back damaged; open the art in a drawing program and export it again", e);
        }
    }

    @Override
    public void close() {
        pool.close();
    }
}
