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
import org.pollex.geometry.placement.Fit;
import org.pollex.geometry.placement.LargestPlacement;
import org.pollex.geometry.shape.Hull;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.WidthField;
import org.pollex.model.catalogue.Method;
import org.pollex.print.PrintedSide;
import org.pollex.print.item.ItemFace;

/** One printed side with measures that several checks share. Each is computed once, when it is first asked for. */
public final class SideMeasures {

    private final PrintedSide side;
    private final Map<String, Lazy<Geometry>> areas = new ConcurrentHashMap<>();
    private final Map<String, Lazy<WidthField>> widths = new ConcurrentHashMap<>();
    private final Map<Double, Lazy<Fit>> fits = new ConcurrentHashMap<>();
    private final Lazy<LargestPlacement> placement;
    private final Lazy<Hull> hull;

    SideMeasures(PrintedSide side) {
        this.side = side;
        placement = new Lazy<>(() -> LargestPlacement.in(side.face().safe()));
        hull = new Lazy<>(() -> Hull.of(printed()));
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
        return inks().size() == 1 ? ink(inks().get(0)) : area("printed", side::printed);
    }

    /** What of everything printed lies on the item. */
    public Geometry onItem() {
        return area("on item", () -> Polygons.intersection(printed(), side.face().area()));
    }

    /** What one ink prints, without parts and holes thinner than {@code dust} mm; not cut at the outline. */
    public Geometry ink(String id, double dust) {
        return area("ink " + id + ' ' + dust, () -> Polygons.withoutSlivers(ink(id), dust));
    }

    /** Everything printed, without parts and holes thinner than {@code dust} mm; not cut at the outline. */
    public Geometry printed(double dust) {
        return area("printed " + dust, () -> inks().size() == 1 ? ink(inks().get(0), dust)
                : Polygons.withoutSlivers(printed(), dust));
    }

    /**
     * How thin the lines of one ink are.
     *
     * @param dust  parts thinner than this are left out, mm
     * @param upTo  largest width of interest, mm
     */
    public WidthField lines(String id, double dust, double upTo) {
        return width("lines " + id + ' ' + dust + ' ' + upTo, () -> WidthField.of(ink(id, dust), upTo));
    }

    /**
     * The widest gap that a limit of a method asks about on this side, mm.
     *
     * @param twoInks  how many times the limit of a reversed line counts where two inks meet
     */
    public double widestGap(Method method, double twoInks) {
        double reversed = method.getLineMinReversed();
        return Math.max(method.getGapMin(), Math.max(reversed, inks().size() > 1 ? reversed * twoInks : reversed));
    }

    /**
     * How narrow the gaps of bare ground between and inside everything printed are.
     *
     * @param dust  gaps thinner than this are left out, mm
     * @param upTo  largest width of interest, mm
     */
    public WidthField gaps(double dust, double upTo) {
        return width("gaps " + dust + ' ' + upTo, () -> WidthField.gapsOf(printed(dust), upTo));
    }

    /**
     * How much larger everything printed could be, as one piece, in the safe zone: the scale is a factor on its present
     * size, the turn is added to its present turn.
     *
     * @param turn  degrees clockwise on screen
     * @throws IllegalArgumentException when nothing is printed here
     */
    public Fit largest(double turn) {
        return fits.computeIfAbsent(turn, unknown -> new Lazy<>(() -> placement.get().at(hull.get(), turn))).get();
    }

    /**
     * The same at the turn at which it could be largest.
     *
     * @throws IllegalArgumentException when nothing is printed here
     */
    public Fit largest() {
        return fits.computeIfAbsent(Double.NaN,
                unknown -> new Lazy<>(() -> placement.get().best(hull.get(), -180, 180))).get();
    }

    private WidthField width(String key, Supplier<WidthField> source) {
        return widths.computeIfAbsent(key, unknown -> new Lazy<>(source)).get();
    }

    private Geometry area(String key, Supplier<Geometry> source) {
        return areas.computeIfAbsent(key, unknown -> new Lazy<>(source)).get();
    }
}
