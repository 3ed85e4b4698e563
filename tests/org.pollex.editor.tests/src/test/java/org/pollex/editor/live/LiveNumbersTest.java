/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.pollex.edit.Pose;
import org.pollex.geometry.outline.Outline;
import org.pollex.geometry.outline.Outlines;
import org.pollex.print.InkRegion;
import org.pollex.print.PrintedMark;
import org.pollex.print.PrintedSide;
import org.pollex.print.PrintedType;
import org.pollex.print.item.ItemFace;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;

/** The numbers of a side while one of its marks is moved or scaled; every value is worked out by hand. */
class LiveNumbersTest {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    /** Line 0.15, gap 0.2, type 0.8, two inks 0.4, dot 0.2, hole 0.25 mm. */
    private static final Limits LIMITS = new Limits(0.15, 0.2, 0.2, 0.2, 0.8, 0.95, 0.3, 0.3, 0.001, 0.4, 0.2, 0.25);

    private static Geometry box(double x, double y, double toX, double toY) {
        return FACTORY.toGeometry(new Envelope(x, toX, y, toY));
    }

    private static List<Coordinate> corners(Geometry box) {
        return List.of(java.util.Arrays.copyOf(box.getCoordinates(), 4));
    }

    /** A disc of 20 mm: wears to the right of x = 5 with the hardness x / 10, a rim of 1 mm does not print. */
    private static ItemFace face() {
        Outline outline = Outlines.circle(20);
        Polygon area = outline.flatten();
        Geometry rim = area.difference(outline.inset(1).flatten());
        Geometry wearing = area.difference(rim).intersection(box(5, -20, 20, 20));
        return new ItemFace("front", outline, area, area.difference(rim).difference(wearing), wearing, rim, 1,
                (x, y) -> x / 10);
    }

    private static PrintedSide side(List<PrintedMark> marks, List<PrintedType> types) {
        return new PrintedSide(face(), marks.stream().map(each -> new InkRegion("navy", 0x1b3a5c, each.area()))
                .toList(), marks, types, List.of(), List.of(), List.of());
    }

    private static PrintedMark mark(String id, Geometry area) {
        return new PrintedMark(id, id, area, false);
    }

    private static PrintedType type(String mark, double xHeight) {
        return new PrintedType(mark, "Lamp", 2 * xHeight, xHeight, box(0, 0, 1, 1));
    }

    private static Finding finding(String check, double measured, Geometry where) {
        return new Finding(check, "", Severity.ERROR, "front", "navy", OptionalDouble.of(measured),
                OptionalDouble.of(1), "mm", where, "It is small.", List.of(), false);
    }

    private static Readout at(MovedMark mark, Pose pose, RestOfSide rest, Worn worn) {
        MarkMeasure measure = MarkMeasure.of(mark.areas(), 1, LIMITS);
        return mark.at(pose, measure.places(pose.scale()), measure, rest, worn, 100, LIMITS);
    }

    private static Point point(double x, double y) {
        return FACTORY.createPoint(new Coordinate(x, y));
    }

    // -- edge

    @Test
    void theWiderRimCounts() {
        ItemFace face = face();
        assertEquals(face.unprintable(), face.rim(0.5));
        assertEquals(face.unprintable(), face.rim(1));
        Geometry wide = face.rim(3);
        // a ring between the radii 7 and 10
        assertEquals(Math.PI * (100 - 49), wide.getArea(), 0.3);
        assertTrue(wide.contains(point(7.1, 0)));
        assertFalse(wide.intersects(point(6.9, 0)));
        assertEquals(face.area(), face.rim(11), "a rim wider than the item leaves nothing");
    }

    // -- wear

    @Test
    void wearIsWeightedByHowHard() {
        ItemFace face = face();
        // 4 by 2 mm, of which 2 by 2 wear with 0.5 at x = 5 to 0.7 at x = 7: 4 mm² times 0.6, of 8 mm²
        Worn worn = Worn.of(box(3, -1, 7, 1), face.wearRisk(), face.area(), face.wear());
        assertEquals(8, worn.whole(), 1e-9);
        assertEquals(2.4, worn.weighted(), 0.01);
        assertEquals(0.3, worn.share(), 0.002);
        // with 8 mm² that do not wear: 2.4 of 16
        assertEquals(0.15, worn.and(Worn.of(box(-4, -1, 0, 1), face.wearRisk(), face.area(), face.wear())).share(),
                0.002);
    }

    @Test
    void whatLiesOffTheItemIsNoPrintThatCouldLast() {
        ItemFace face = face();
        Worn worn = Worn.of(box(0, 8, 2, 20), face.wearRisk(), face.area(), face.wear());
        // below the circle between x = 0 and 2, the integral of sqrt(100 - x²) is 19.87, less 2 times 8
        assertEquals(3.87, worn.whole(), 0.02);
        assertEquals(0, worn.share());
    }

    @Test
    void aStripThinnerThanTheGridCountsToo() {
        ItemFace face = face();
        Worn worn = Worn.of(box(6, 0.01, 6.02, 0.03), face.wearRisk(), face.area(), face.wear());
        assertEquals(0.6, worn.share(), 0.01);
    }

    // -- type

    @Test
    void theSmallestTypeIsThatOfAllMarks() {
        Geometry mine = box(-1, -1, 1, 1);
        PrintedSide side = side(List.of(mark("mine", mine), mark("other", box(-4, -4, -2, -2))),
                List.of(type("mine", 1.2), type("other", 0.9)));
        RestOfSide rest = RestOfSide.of(side, List.of(), "mine", LIMITS);
        assertEquals(0.9, rest.type().orElseThrow());
        MovedMark moved = new MovedMark(List.of(mine), corners(mine), OptionalDouble.of(1.2));
        assertEquals(0.9, at(moved, new Pose(0, 0, 1, 0, false), rest, Worn.NONE).type().orElseThrow(), 1e-9);
        // at half the size 0.6 is smaller than the other's 0.9; at twice the size it is 2.4
        assertEquals(0.6, at(moved, new Pose(0, 0, 0.5, 0, false), rest, Worn.NONE).type().orElseThrow(), 1e-9);
        assertEquals(0.9, at(moved, new Pose(0, 0, 2, 0, false), rest, Worn.NONE).type().orElseThrow(), 1e-9);
        assertEquals(2.4, at(moved, new Pose(0, 0, 2, 0, false), RestOfSide.NONE, Worn.NONE).type().orElseThrow(),
                1e-9);
    }

    // -- share

    @Test
    void theShareIsThatOfTheHullOfAllMarks() {
        Geometry mine = box(-1, -1, 1, 1);
        PrintedSide side = side(List.of(mark("mine", mine), mark("other", box(4, -1, 6, 1))), List.of());
        RestOfSide rest = RestOfSide.of(side, List.of(), "mine", LIMITS);
        MovedMark moved = new MovedMark(List.of(mine), corners(mine), OptionalDouble.empty());
        // from x = -1 to 6, 2 mm high, of a safe zone of 100 mm²
        assertEquals(0.14, at(moved, new Pose(0, 0, 1, 0, false), rest, Worn.NONE).share().orElseThrow(), 1e-9);
        // moved to x = -2: from -3 to 6
        assertEquals(0.18, at(moved, new Pose(-2, 0, 1, 0, false), rest, Worn.NONE).share().orElseThrow(), 1e-9);
        assertEquals(0.04, at(moved, new Pose(-2, 0, 1, 0, false), RestOfSide.NONE, Worn.NONE).share().orElseThrow(),
                1e-9);
    }

    // -- dots, holes, gaps

    @Test
    void dotsAndHolesShrinkWithTheMark() {
        Geometry plate = box(-3, -3, 3, 3).difference(box(0, 0, 0.5, 0.5)).union(box(4, 0, 4.4, 0.4));
        MarkMeasure measure = MarkMeasure.of(List.of(plate), 1, LIMITS);
        // the disc with the area of a square of 0.4 mm has a diameter of 0.4 * 2 / sqrt(pi)
        assertEquals(0.4514, measure.speck(1).orElseThrow(), 1e-4);
        assertEquals(0.1806, measure.speck(0.4).orElseThrow(), 1e-4);
        assertEquals(0.5642, measure.pinhole(1).orElseThrow(), 1e-4);
        assertEquals(0.2257, measure.pinhole(0.4).orElseThrow(), 1e-4);
        assertTrue(MarkMeasure.of(List.of(box(0, 0, 1, 1)), 1, LIMITS).pinhole(1).isEmpty());
    }

    @Test
    void whatWasFoundElsewhereStaysAndWhatWasFoundOnTheMarkGoes() {
        Geometry mine = box(-1, -1, 1, 1);
        PrintedSide side = side(List.of(mark("mine", mine), mark("other", box(4, -1, 6, 1))), List.of());
        RestOfSide rest = RestOfSide.of(side, List.of(finding("line-too-thin", 0.05, point(0, 0)),
                finding("line-too-thin", 0.11, point(5, 0)), finding("speck", 0.1, point(5, 0.5)),
                finding("pinhole", 0.13, point(1, 1)), finding("gap-too-narrow", 0.17, point(1.1, 0))), "mine", LIMITS);
        assertEquals(OptionalDouble.of(0.11), rest.line());
        assertEquals(OptionalDouble.of(0.1), rest.speck());
        assertEquals(OptionalDouble.empty(), rest.pinhole());
        assertEquals(OptionalDouble.empty(), rest.gap(), "a gap beside the mark moves with it");
    }

    @Test
    void theGapToTheNextMarkIsSeen() {
        Geometry mine = box(-1, -1, 1, 1);
        PrintedSide side = side(List.of(mark("mine", mine), mark("other", box(4, -1, 6, 1))), List.of());
        RestOfSide rest = RestOfSide.of(side, List.of(), "mine", LIMITS);
        MovedMark moved = new MovedMark(List.of(mine), corners(mine), OptionalDouble.empty());
        assertTrue(at(moved, new Pose(0, 0, 1, 0, false), rest, Worn.NONE).gap().isEmpty());
        // the right wall at 2.9 + 1 mm, the other mark at 4
        assertEquals(0.1, at(moved, new Pose(2.9, 0, 1, 0, false), rest, Worn.NONE).gap().orElseThrow(), 1e-9);
        assertTrue(at(moved, new Pose(5, 0, 0.2, 0, false), rest, Worn.NONE).gap().isEmpty(), "it lies on the other");
        assertTrue(at(moved, new Pose(4, 0, 1, 0, false), rest, Worn.NONE).gap().isEmpty(), "they overlap");
    }

    @Test
    void anOpeningBetweenTwoInksNeedsMore() {
        // two inks side by side, with a slit of 0.3 mm left open between them: enough for one ink (0.2), too little for
        // two (0.4)
        Geometry left = box(-4, -4, 0, 4).difference(box(-0.15, -2, 0, 2));
        Geometry right = box(0, -4, 4, 4).difference(box(0, -2, 0.15, 2));
        assertTrue(MarkMeasure.thinnest(MarkMeasure.of(List.of(left.union(right)), 1, LIMITS).places(1), true)
                .isEmpty());
        List<ThinPlace> two = MarkMeasure.of(List.of(left, right), 1, LIMITS).places(1);
        assertEquals(0.3, MarkMeasure.thinnest(two, true).orElseThrow(), 0.005);
        assertEquals(0.4, two.get(0).limit());
    }

    @Test
    void movingKeepsWhatOnlyScalingChanges() {
        Readout before = new Readout(OptionalDouble.of(0.3), OptionalDouble.of(0.5), OptionalDouble.of(1),
                OptionalDouble.of(0.2), OptionalDouble.of(0.6), OptionalDouble.of(0.7), OptionalDouble.of(0.1));
        Readout now = new Readout(OptionalDouble.empty(), OptionalDouble.of(0.1), OptionalDouble.of(1),
                OptionalDouble.of(0.4), OptionalDouble.of(0.6), OptionalDouble.empty(), OptionalDouble.of(0.3));
        assertEquals(new Readout(OptionalDouble.of(0.3), OptionalDouble.of(0.1), OptionalDouble.of(1),
                OptionalDouble.of(0.4), OptionalDouble.of(0.6), OptionalDouble.of(0.7), OptionalDouble.of(0.3)),
                now.moved(before));
        assertEquals(now, now.moved(Readout.NONE));
    }
}
