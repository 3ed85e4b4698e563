/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.worker;

import java.util.ArrayList;
import java.util.List;

import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtNotice;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.BeyondReaderException;
import org.pollex.artwork.ReadLimits;
import org.pollex.artwork.svg.SvgReader;
import org.pollex.artwork.svg.batik.BatikReader;
import org.pollex.artwork.svg.gate.CleanSvg;
import org.pollex.artwork.svg.gate.SvgGate;

/**
 * How a file is read inside the separate process: the gate first; then the reader of the common subset, which is more
 * exact and may well know the file now that entities are expanded; then Batik.
 */
final class WorkerReading {

    private WorkerReading() {
    }

    static Art read(ArtSource source, ReadLimits limits) throws ArtException {
        CleanSvg clean = SvgGate.clean(source, limits);
        try {
            Art art = new SvgReader().read(new ArtSource(source.name(), clean.bytes()), limits);
            List<ArtNotice> notices = new ArrayList<>(clean.notices());
            art.notices().stream().filter(n -> !notices.contains(n)).forEach(notices::add);
            return new Art(art.name(), art.width(), art.height(), art.sized(), art.regions(), art.texts(), notices);
        } catch (BeyondReaderException e) {
            return new BatikReader().read(clean, source.name(), limits);
        }
    }
}
