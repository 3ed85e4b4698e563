/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.bench.geometry;

import java.util.concurrent.TimeUnit;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.pollex.geometry.outline.Outlines;
import org.pollex.geometry.outline.RoundedTriangle;
import org.pollex.geometry.placement.Fit;
import org.pollex.geometry.placement.LargestPlacement;
import org.pollex.geometry.shape.Hull;
import org.pollex.geometry.shape.Polygons;

/** Largest placement of art in the safe zone of a pick, whole (convex) or with the tip cut out by a disc (hollow). */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class PlacementBench {

    /** The zone. */
    @Param({"convex", "hollow"})
    public String zone;

    /** The art: a few icons, or a shape that reaches into the tip so that the hollow decides. */
    @Param({"icons", "wedge"})
    public String art;

    private LargestPlacement placement;
    private Hull hull;

    /** Makes zone and hull. */
    @Setup
    public void setUp() {
        Geometry safe = RoundedTriangle.outline(RoundedTriangle.Dimensions.symmetric(26, 31, 5, 2, 1.2, 1.5))
                .inset(1).flatten();
        Geometry tip = Outlines.circle(9).moved(0, 15).flatten();
        placement = LargestPlacement.in(zone.equals("convex") ? safe : Polygons.difference(safe, tip));
        hull = art.equals("icons") ? Hull.of(IconSheet.sheet(3)) : Hull.of(new Coordinate(-3, -5),
                new Coordinate(3, -5), new Coordinate(3.2, 0), new Coordinate(1, 6), new Coordinate(-1, 6));
        Fit fit = placement.best(hull, -180, 180);
        System.out.println("\n# " + zone + ", " + art + ": hull of " + hull.size() + " corners, " + fit);
    }

    /** At the turn given. */
    @Benchmark
    public Fit atOneTurn() {
        return placement.at(hull, 0);
    }

    /** At any turn. */
    @Benchmark
    public Fit bestTurn() {
        return placement.best(hull, -180, 180);
    }
}
