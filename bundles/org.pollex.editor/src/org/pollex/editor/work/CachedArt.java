/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.work;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.model.design.Placement;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ArtState;
import org.pollex.print.ArtSupply;
import org.pollex.rules.Suite;

/**
 * Art of the placements of a design, read once for each content. Whether the file is still there and still the same is
 * looked at every time. Safe for threads.
 */
final class CachedArt implements ArtSupply {

    private final ArtSupply files;
    private final Path design;
    private final Map<String, Art> kept = new ConcurrentHashMap<>();

    CachedArt(Suite suite, Path design) {
        this.files = suite.artBeside(design);
        this.design = design;
    }

    @Override
    public Art art(Placement placement) throws ArtException {
        String key = placement.getArt() + " " + placement.getSha256();
        if (ArtFiles.state(design, placement) instanceof ArtState.Present) {
            Art known = kept.get(key);
            if (known != null) {
                return known;
            }
        }
        Art art = files.art(placement);
        kept.put(key, art);
        return art;
    }
}
