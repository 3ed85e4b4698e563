/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

import java.util.List;

/**
 * One painted area. A point is painted where it lies inside {@code path} and inside every one of {@code clips}.
 *
 * @param id      id of the element in the file, or a path of element names and positions such as {@code g[2]/path[1]}
 * @param path    area with its fill rule; strokes are already outlines, text already glyph outlines
 * @param paint   what it is painted with
 * @param clips   areas that cut it, outermost first; empty when nothing does
 * @param stroke  whether the area came from a stroke
 */
public record ArtRegion(String id, ArtPath path, ArtPaint paint, List<ArtPath> clips, boolean stroke) {

    public ArtRegion {
        clips = List.copyOf(clips);
    }
}
