/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.List;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.width.WidthPlace;
import org.pollex.print.ColourArea;

/**
 * Art in several inks, brought to the limits of a method.
 *
 * @param areas   its colours, not overlapping, mm; colours of which nothing is left are missing
 * @param mended  how many places were changed
 * @param lost    parts of one ink of which less than a fifth still prints in it
 * @param filled  openings of bare stock of which less than a fifth is still open
 * @param broken  lines and gaps that are still below the limits, by the width field of the result
 */
public record MendedInks(List<ColourArea> areas, int mended, List<Polygon> lost, List<Polygon> filled,
        List<WidthPlace> broken) {

    public MendedInks {
        areas = List.copyOf(areas);
        lost = List.copyOf(lost);
        filled = List.copyOf(filled);
        broken = List.copyOf(broken);
    }
}
