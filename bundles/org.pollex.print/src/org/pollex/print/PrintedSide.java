/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.pollex.print.item.ItemFace;

/**
 * One side, flattened. Nothing is cut at the outline, so that what falls off can be seen.
 *
 * @param face      the face it is printed on
 * @param regions   areas of ink, one for each pair of ink and art colour; they overlap only where a mark overprints
 * @param marks     the marks of the design that print, lowest first
 * @param types     lettering, with its measured x-height
 * @param matches   how each colour of the art became an ink or bare stock
 * @param rasters   pictures of pixels and their resolution on the item
 * @param notices   what of the art is not as its file means it
 * @param overprints where areas of different inks lie over one another; none unless a mark asks for it
 * @param meant     what the art means where it can be seen, its bare colours too; lowest first
 */
public record PrintedSide(ItemFace face, List<InkRegion> regions, List<PrintedMark> marks, List<PrintedType> types,
        List<ColourMatch> matches, List<PrintedRaster> rasters, List<PrintedNotice> notices,
        List<Overprint> overprints, List<MeantArt> meant) {

    public PrintedSide {
        regions = List.copyOf(regions);
        marks = List.copyOf(marks);
        types = List.copyOf(types);
        matches = List.copyOf(matches);
        rasters = List.copyOf(rasters);
        notices = List.copyOf(notices);
        overprints = List.copyOf(overprints);
        meant = List.copyOf(meant);
    }

    /** A side of whose art only the print is known, and on which no ink lies over another. */
    public PrintedSide(ItemFace face, List<InkRegion> regions, List<PrintedMark> marks, List<PrintedType> types,
            List<ColourMatch> matches, List<PrintedRaster> rasters, List<PrintedNotice> notices) {
        this(face, regions, marks, types, matches, rasters, notices, List.of(), List.of());
    }

    /** Name of the face: front, back. */
    public String name() {
        return face.name();
    }

    /** Ids of the inks that print on this side, in the order of their first region. */
    public List<String> inks() {
        return regions.stream().map(InkRegion::ink).distinct().toList();
    }

    /** Everything that one ink prints, as one valid area; empty when it prints nothing. */
    public Geometry ink(String id) {
        return InkRegions.union(regions.stream().filter(region -> region.ink().equals(id)).toList());
    }

    /** Everything printed, all inks together, as one valid area. */
    public Geometry printed() {
        return InkRegions.union(regions);
    }
}
