/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.design;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.Printed;
import org.pollex.print.PrintedMark;

/** Everything that the marks of a side paint, grounds left out, whether or not other marks cover it. */
final class PrintedArea {

    private PrintedArea() {
    }

    /** The area in mm on the item; empty when the side prints nothing. */
    static Geometry of(Printed printed, String side) {
        List<Geometry> areas = printed.side(side).stream().flatMap(each -> each.marks().stream())
                .map(PrintedMark::area).filter(area -> !area.isEmpty()).toList();
        return areas.isEmpty() ? Polygons.empty() : areas.size() == 1 ? areas.get(0) : OverlayNGRobust.union(areas);
    }
}
