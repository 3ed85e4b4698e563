/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.placement.LargestPlacement;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.ShapeKind;
import org.pollex.model.design.Side;
import org.pollex.model.design.TextLine;
import org.pollex.print.Printed;
import org.pollex.print.ShippedLettering;
import org.pollex.rules.CheckContext;
import org.pollex.rules.Contributions;
import org.pollex.rules.Suite;
import org.pollex.rules.crowd.Crowding;
import org.pollex.rules.crowd.MarkGroup;
import org.pollex.rules.crowd.Split;

/** Which marks are proposed for the back, on layouts with lines of text and plain shapes. */
class CrowdingTest {

    private static Suite suite;

    private final Design design = DesignFactory.eINSTANCE.createDesign();
    private final Layer layer = DesignFactory.eINSTANCE.createLayer();

    @BeforeAll
    static void install() {
        suite = Suite.of(Contributions.fromClassPath(CrowdingTest.class.getClassLoader()));
    }

    CrowdingTest() {
        design.setProduct("standard-pick");
        design.setMaterial("solid-white");
        design.setMethod("pad-one-colour");
        design.getInks().add("black");
        Side front = DesignFactory.eINSTANCE.createSide();
        front.setName("front");
        front.getLayers().add(layer);
        design.getSides().add(front);
    }

    private void text(String words, double x, double y, double size) {
        TextLine line = DesignFactory.eINSTANCE.createTextLine();
        line.setText(words);
        line.setSize(size);
        add(line, words, x, y);
    }

    private void shape(String name, ShapeKind kind, double x, double y, double w, double h, double line) {
        PlainShape shape = DesignFactory.eINSTANCE.createPlainShape();
        shape.setKind(kind);
        shape.setWidth(w);
        shape.setHeight(h);
        shape.setLineWidth(line);
        add(shape, name, x, y);
    }

    private void add(Mark mark, String name, double x, double y) {
        mark.setId(name);
        mark.setName(name);
        mark.setX(x);
        mark.setY(y);
        layer.getMarks().add(mark);
    }

    private Crowding crowding() throws Exception {
        Printed printed = suite.printer(design, placement -> null, new ShippedLettering()).print(design);
        CheckContext context = CheckContext.of(printed, suite.catalogues());
        return Crowding.of(context, context.sides().get(0));
    }

    private static List<String> names(List<MarkGroup> groups) {
        return groups.stream().map(MarkGroup::name).sorted().toList();
    }

    private static List<String> moved(Crowding crowding) {
        return crowding.split().map(split -> names(split.moved())).orElse(List.of());
    }

    private void twoSmallLines(double size) {
        text("tidebell.example", 0, 0, size);
        text("tour of twenty harbours", 0, 2, size);
    }

    private void band() {
        shape("bell", ShapeKind.ELLIPSE, 0, -8, 6, 6, 0);
        text("TIDE BELL", 0, -3, 4);
        twoSmallLines(1.3);
    }

    private void crest() {
        text("BRASS", 0, -11, 3);
        shape("shield", ShapeKind.RECTANGLE, 0, -4, 7, 9, 0.1);
        shape("left ear", ShapeKind.ELLIPSE, -9, -4, 3, 3, 0);
        shape("right ear", ShapeKind.ELLIPSE, 9, -4, 3, 3, 0);
        text("Harbour Brass Band", 0, 2.5, 1.1);
        text("founded in a storm", 0, 4, 1.1);
    }

    private void poster() {
        text("FOGHORN", 0, -6, 3.4);
        text("with the lamp rock choir and many more", 0, -2, 0.8);
        text("doors at seven, ferry back at midnight", 0, 0, 0.8);
        text("harbour hall", 0, 2, 0.8);
    }

    @Test
    void nothingIsMovedOfOneMarkThoughItFails() throws Exception {
        shape("ring", ShapeKind.ELLIPSE, 0, -4, 14, 10, 0.05);
        Crowding one = crowding();
        // a line of 0.05 mm holds at three times its size
        assertEquals(3, one.worst().need(), 0.01);
        assertTrue(one.of(one.worst()) > 1.5, "crowding " + one.of(one.worst()));
        assertEquals(List.of(), moved(one));
    }

    @Test
    void nothingIsMovedOfANameUnderItsMark() throws Exception {
        shape("ring", ShapeKind.ELLIPSE, 0, -6, 8, 8, 0.4);
        text("Lamp Rock", 0, 0, 2.2);
        assertEquals(List.of(), moved(crowding()));
    }

    @Test
    void nothingIsMovedOfTwoLogosThatHold() throws Exception {
        shape("left", ShapeKind.ELLIPSE, -5, -4, 8, 8, 0.3);
        shape("right", ShapeKind.RECTANGLE, 5, -4, 8, 8, 0.3);
        assertEquals(List.of(), moved(crowding()));
    }

    @Test
    void webAddressAndTourOfABandMoveAndHoldOnTheBack() throws Exception {
        band();
        Crowding band = crowding();
        assertEquals(List.of("tidebell.example", "tour of twenty harbours"), moved(band));
        Split split = band.split().orElseThrow();
        split.moved().forEach(group -> {
            assertTrue(band.of(group) > 1.3, group.name());
            assertTrue(split.crowding(group) <= 1, group.name());
        });
        // both lines at the same scale, not over one another, and inside the safe zone of the back
        var safe = suite.item("standard-pick").face("back").orElseThrow().safe().buffer(1e-9);
        var first = placed(split, 0);
        var second = placed(split, 1);
        assertTrue(safe.covers(first) && safe.covers(second) && first.distance(second) > 0.2);
    }

    private static Geometry placed(Split split, int i) {
        return split.moved().get(i).hull().moved(split.moves().get(i).x, split.moves().get(i).y)
                .placed(split.there().scale(), 0, split.there().dx(), split.there().dy()).polygon();
    }

    @Test
    void smallLinesAndEarsOfACrestMoveAndWhatStaysGrows() throws Exception {
        crest();
        Crowding crest = crowding();
        assertEquals(List.of("Harbour Brass Band", "founded in a storm", "left ear", "right ear"), moved(crest));
        Split split = crest.split().orElseThrow();
        assertTrue(split.gain() > 1.2, "gain " + split.gain());
        assertEquals(split.here().scale() / crest.scale(), split.gain(), 1e-12);
    }

    @Test
    void theSmallSecondLineOfTwoTextsMoves() throws Exception {
        text("GULL", 0, -5, 8);
        text("ferry line and bakery", 0, 0, 1.3);
        assertEquals(List.of("ferry line and bakery"), moved(crowding()));
    }

    /** What fails on either side stays, and is told. */
    @Test
    void linesThatFailOnEitherSideStayOnAPoster() throws Exception {
        poster();
        Crowding poster = crowding();
        assertEquals(List.of("harbour hall"), moved(poster));
        Split split = poster.split().orElseThrow();
        assertEquals(2, split.stay().stream().filter(group -> split.crowding(group) > 1.5).count());
    }

    /** Judging by the worst group alone would move nothing where one move does not cure all of them. */
    @Test
    void theWorstGroupAloneIsAPoorJudge() throws Exception {
        poster();
        assertEquals(List.of(), byWorstAlone(crowding()));
        assertEquals(List.of("harbour hall"), moved(crowding()));
    }

    /** Going for the largest scale alone would move the name or the emblem. */
    @Test
    void theLargestScaleIsAPoorJudge() throws Exception {
        crest();
        assertTrue(byScaleAlone(crowding()).contains("shield") || byScaleAlone(crowding()).contains("BRASS"),
                byScaleAlone(crowding()).toString());
        layer.getMarks().clear();
        band();
        assertTrue(byScaleAlone(crowding()).contains("TIDE BELL"), byScaleAlone(crowding()).toString());
    }

    /** A rival: the cost of the worst group of each side in place of that of all. */
    private static List<String> byWorstAlone(Crowding crowding) throws Exception {
        return rival(crowding, (stay, back, here, there) -> cost(stay, here) + cost(back, there) + (back.isEmpty() ? 0
                : 0.15 + importance(crowding, back)) - 0.25 * Math.log(here / crowding.scale()));
    }

    private static double cost(List<MarkGroup> groups, double scale) {
        double worst = groups.stream().mapToDouble(MarkGroup::need).max().orElse(0);
        return worst > scale ? 0.25 + Math.log(worst / scale) : 0;
    }

    private static double importance(Crowding crowding, List<MarkGroup> back) {
        double all = crowding.groups().stream().mapToDouble(group -> group.box().getArea()).sum();
        return back.stream().mapToDouble(group -> group.box().getArea() / all).sum();
    }

    /** A rival: what frees the most scale. */
    private static List<String> byScaleAlone(Crowding crowding) throws Exception {
        return rival(crowding, (stay, back, here, there) -> -here);
    }

    private interface Cost {
        double of(List<MarkGroup> stay, List<MarkGroup> back, double here, double there);
    }

    private static List<String> rival(Crowding crowding, Cost cost) throws Exception {
        List<MarkGroup> groups = crowding.groups();
        double best = Double.POSITIVE_INFINITY;
        List<String> choice = List.of();
        for (int chosen = 0; chosen < (1 << groups.size()) - 1; chosen++) {
            List<MarkGroup> stay = new ArrayList<>();
            List<MarkGroup> back = new ArrayList<>();
            for (int i = 0; i < groups.size(); i++) {
                ((chosen >> i & 1) == 1 ? back : stay).add(groups.get(i));
            }
            double of = cost.of(stay, back, scale(stay), back.isEmpty() ? 1 : scale(back));
            if (of < best - 1e-9) {
                best = of;
                choice = names(back);
            }
        }
        return choice;
    }

    private static double scale(List<MarkGroup> groups) throws Exception {
        List<Geometry> hulls = new ArrayList<>();
        groups.forEach(group -> hulls.add(group.hull().polygon()));
        return LargestPlacement.in(suite.item("standard-pick").faces().get(0).safe())
                .at(Polygons.factory().buildGeometry(hulls), 0).scale();
    }

    @Test
    void theFindingNamesWhatMovesWhatStaysAndWhatStillFails() throws Exception {
        crest();
        assertEquals("To hold its lettering the front would have to be 1.7 times larger than fits. Move "
                + "\"left ear\", \"right ear\", \"Harbour Brass Band\" and 1 more to the back: what stays can then be "
                + "1.53 times as large, and neither side is crowded any more.", message());
        layer.getMarks().clear();
        poster();
        assertEquals("To hold its lettering the front would have to be 1.9 times larger than fits. Move "
                + "\"harbour hall\" to the back: what stays keeps its size. Still too small: \"with the lamp rock "
                + "choir\u2026\" on the front needs 1.9 times, cut words; \"doors at seven, ferry back\u2026\" on the "
                + "front needs 1.9 times, cut words.", message());
    }

    private String message() throws Exception {
        Printed printed = suite.printer(design, placement -> null, new ShippedLettering()).print(design);
        return suite.check(printed).stream().filter(each -> each.check().equals("crowded-side")
                && each.kind().equals("detail")).findFirst().orElseThrow().message();
    }

    @Test
    void marksThatLieOverOneAnotherStayTogether() throws Exception {
        band();
        shape("panel", ShapeKind.RECTANGLE, 0, 1, 14, 3.6, 0);
        Crowding panel = crowding();
        assertEquals(3, panel.groups().size(), names(panel.groups()).toString());
        assertTrue(names(panel.groups()).contains("tidebell.example with 2 others"), names(panel.groups()).toString());
    }

    @Test
    void moreMarksThanCanBeTriedArePutTogether() throws Exception {
        for (int i = 0; i < 30; i++) {
            shape("dot " + i, ShapeKind.ELLIPSE, i % 6 * 3 - 7.5, i / 6 * 2.5 - 10, 1, 1, 0);
        }
        text("Lamp Rock", 0, 5, 3);
        Crowding many = crowding();
        assertEquals(8, many.groups().size());
        assertEquals(31, many.groups().stream().mapToInt(group -> group.marks().size()).sum());
        assertEquals(1, many.groups().stream().filter(MarkGroup::lettering).count());
    }

    @Test
    void aGroundUnderEverythingIsNoGroup() throws Exception {
        shape("ground", ShapeKind.RECTANGLE, 0, 0, 40, 40, 0);
        band();
        assertEquals(4, crowding().groups().size());
    }

    @Test
    void nothingIsProposedWhereTheBackIsInUse() throws Exception {
        band();
        Side back = DesignFactory.eINSTANCE.createSide();
        back.setName("back");
        Layer there = DesignFactory.eINSTANCE.createLayer();
        back.getLayers().add(there);
        design.getSides().add(back);
        assertEquals(2, moved(crowding()).size());
        TextLine line = DesignFactory.eINSTANCE.createTextLine();
        line.setId("back line");
        line.setText("ahoy");
        line.setSize(4);
        there.getMarks().add(line);
        assertEquals(Optional.empty(), crowding().split());
        assertEquals(Optional.empty(), crowding().free());
    }
}
