/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.item.ItemFace;

/** One printed side with measures that several checks share. Each is computed once, when it is first asked for. */
public final class SideMeasures {

    private final PrintedSide side;
    private final Map<String, Lazy<Geometry>> areas = new ConcurrentHashMap<>();

    SideMeasures(Printed printed, PrintedSide side) {
        this.side = side;
    }

    /** The side. */
    public PrintedSide side() {
        return side;
    }

    /** Name of the face. */
    public String name() {
        return side.name();
    }

    /** The face. */
    public ItemFace face() {
        return side.face();
    }

    /** Ids of the inks that print here. */
    public List<String> inks() {
        return side.inks();
    }

    /** Everything that one ink prints; not cut at the outline. */
    public Geometry ink(String id) {
        return area("ink " + id, () -> side.ink(id));
    }

    /** Everything printed; not cut at the outline. */
    public Geometry printed() {
        return area("printed", side::printed);
    }

    /** What of everything printed lies on the item. */
    public Geometry onItem() {
        return area("on item", () -> Polygons.intersection(printed(), side.face().area()));
    }

    private Geometry area(String key, Supplier<Geometry> source) {
        return areas.computeIfAbsent(key, unknown -> new Lazy<>(source)).get();
    }
}
