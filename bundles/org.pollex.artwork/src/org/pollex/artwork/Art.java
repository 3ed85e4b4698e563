/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

import java.util.List;

/**
 * Client art, read and resolved: what is painted, where, in which order.
 * Coordinates are millimetres, x right, y down, origin at the top left corner of the page of the art.
 *
 * @param name     name to show, usually the file name
 * @param width    width of the page in mm, above 0
 * @param height   height of the page in mm, above 0
 * @param sized    whether the file states a physical size; if not, one user unit was taken as 1/96 inch
 * @param regions  painted areas, lowest first
 * @param texts    text of the file, whose outlines are among the regions
 * @param notices  everything that could not be honoured or had a stand-in, by name
 */
public record Art(String name, double width, double height, boolean sized, List<ArtRegion> regions,
        List<ArtText> texts, List<ArtNotice> notices) {

    public Art {
        if (!(width > 0) || !(height > 0) || !Double.isFinite(width) || !Double.isFinite(height)) {
            throw new IllegalArgumentException("The page of the art must be larger than 0 mm, not "
                    + width + " x " + height + ".");
        }
        regions = List.copyOf(regions);
        texts = List.copyOf(texts);
        notices = List.copyOf(notices);
    }
}
