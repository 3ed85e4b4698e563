/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.worker;

import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;
import org.pollex.artwork.svg.batik.BatikReader;
import org.pollex.artwork.svg.gate.CleanSvg;
import org.pollex.artwork.svg.gate.SvgGate;

/**
 * How a file is read inside the separate process: the gate first, then Batik.
 */
final class WorkerReading {

    private WorkerReading() {
    }

    static Art read(ArtSource source, ReadLimits limits) throws ArtException {
        CleanSvg clean = SvgGate.clean(source, limits);
        return new BatikReader().read(clean, source.name(), limits);
    }
}
