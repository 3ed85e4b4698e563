/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.fixes;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.gef.commands.Command;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.ShapeKind;
import org.pollex.model.design.Side;
import org.pollex.model.design.TextLine;
import org.pollex.model.store.ArtFile;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ModelFiles;
import org.pollex.print.Printed;
import org.pollex.print.ShippedLettering;
import org.pollex.rules.Contributions;
import org.pollex.rules.Finding;
import org.pollex.rules.Fixes;
import org.pollex.rules.Suite;

/**
 * For each remedy: a design with the trouble, the remedy, a new print and a new check, in which the finding is gone;
 * then undo, after which the design is the same to the byte.
 */
class RemediesTest {

    private static final String BUOY = """
            <svg xmlns="http://www.w3.org/2000/svg" width="10mm" height="10mm" viewBox="0 0 100 100">
              <path d="M20 30h60v55H20z" fill="#1b3a5c"/>
              %s
            </svg>
            """;

    private static Suite suite;

    @TempDir
    Path folder;
    private Design design;
    private Path file;

    @BeforeAll
    static void install() {
        suite = Suite.of(Contributions.fromClassPath(RemediesTest.class.getClassLoader()));
        assertEquals(List.of(), suite.problems());
    }

    @BeforeEach
    void empty() {
        file = folder.resolve("buoy.design");
        design = DesignFactory.eINSTANCE.createDesign();
        design.setName("Buoy");
        design.setProduct("standard-pick");
        design.setMaterial("solid-yellow");
        design.setMethod("pad-one-colour");
        design.getInks().add("navy");
        Side side = DesignFactory.eINSTANCE.createSide();
        side.setName("front");
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        side.getLayers().add(layer);
        design.getSides().add(side);
    }

    private Placement place(String extra) throws Exception {
        Path art = folder.resolve("buoy.svg");
        Files.write(art, String.format(BUOY, extra).getBytes(StandardCharsets.UTF_8));
        ArtFile adopted = ArtFiles.adopt(file, art);
        Placement placement = DesignFactory.eINSTANCE.createPlacement();
        placement.setId("m1");
        placement.setArt(adopted.path());
        placement.setSha256(adopted.sha256());
        design.getSides().get(0).getLayers().get(0).getMarks().add(placement);
        return placement;
    }

    private Printed print() throws Exception {
        return suite.printer(design, suite.artBeside(file), new ShippedLettering()).print(design);
    }

    private List<Finding> findings(String check) throws Exception {
        return suite.check(print()).stream().filter(each -> each.check().equals(check)).toList();
    }

    private Finding finding(String check) throws Exception {
        List<Finding> found = findings(check);
        assertTrue(!found.isEmpty(), "the design was to have the finding " + check);
        return found.get(0);
    }

    /** Applies a remedy, sees the check satisfied, takes it back and sees the bytes of before. */
    private void cures(String remedy, Finding finding) throws Exception {
        byte[] before = ModelFiles.DESIGNS.write(design);
        // found on a copy, done on the design
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        Design copy = (Design) copier.copy(design);
        Map<EObject, EObject> originals = new HashMap<>();
        copier.forEach((original, copied) -> originals.put(copied, original));
        Remedy answer = new Remedies(suite, copy, print(), originals::get).apply(remedy, finding);
        Command command = assertInstanceOf(Remedy.Done.class, answer, () -> answer.toString()).command();
        assertArrayEquals(before, ModelFiles.DESIGNS.write(copy), "the copy was changed by " + remedy);
        assertArrayEquals(before, ModelFiles.DESIGNS.write(design), "asking changed the design: " + remedy);
        assertTrue(command.canExecute());
        command.execute();
        assertEquals(List.of(), findings(finding.check()).stream().filter(each -> each.severity()
                .compareTo(finding.severity()) <= 0).toList(), "after " + remedy);
        command.undo();
        assertArrayEquals(before, ModelFiles.DESIGNS.write(design), "after undo of " + remedy);
    }

    @Test
    void artOffTheEdgeMovesInside() throws Exception {
        Placement buoy = place("");
        buoy.setX(9);
        cures(Fixes.MOVE_INTO_SAFE, finding("art-off-edge"));
        cures(Fixes.PLACE_LARGEST, finding("art-off-edge"));
        // the move is short: the art stays on its side of the middle
        Remedy answer = new Remedies(suite, design, print()).apply(Fixes.MOVE_INTO_SAFE, finding("art-off-edge"));
        ((Remedy.Done) answer).command().execute();
        assertTrue(buoy.getX() > 3, "moved to x " + buoy.getX());
        assertEquals(1, buoy.getScale());
    }

    @Test
    void artAtTheTipMovesOutOfTheWear() throws Exception {
        place("").setY(9);
        cures(Fixes.MOVE_INTO_SAFE, finding("art-in-wear"));
    }

    @Test
    void tooLargeIsRefusedWithTheSizeThatFits() throws Exception {
        place("").setScale(4);
        Remedy answer = new Remedies(suite, design, print()).apply(Fixes.MOVE_INTO_SAFE, finding("art-off-edge"));
        Remedy.Refused refused = assertInstanceOf(Remedy.Refused.class, answer);
        assertTrue(refused.why().contains("%") && refused.why().contains("too large"), refused.why());
    }

    @Test
    void thinLineIsScaledToTheLimit() throws Exception {
        place("<path d='M10 5h80v1.2h-80z' fill='#1b3a5c'/>").setScale(0.9);
        cures(Fixes.SCALE_UP, finding("line-too-thin"));
    }

    @Test
    void whatCannotGrowEnoughIsRefused() throws Exception {
        place("<path d='M10 5h80v0.3h-80z' fill='#1b3a5c'/>");
        Remedy answer = new Remedies(suite, design, print()).apply(Fixes.SCALE_UP, finding("line-too-thin"));
        assertTrue(assertInstanceOf(Remedy.Refused.class, answer).why().contains("times"), answer.toString());
    }

    @Test
    void smallTypeIsScaledUntilItIsLegal() throws Exception {
        TextLine line = DesignFactory.eINSTANCE.createTextLine();
        line.setId("t1");
        line.setText("Lamp Rock");
        line.setSize(1.5);
        line.setInk("navy");
        design.getSides().get(0).getLayers().get(0).getMarks().add(line);
        cures(Fixes.SCALE_UP, finding("type-too-small"));
        Remedy answer = new Remedies(suite, design, print()).apply(Fixes.MOVE_TO_OTHER_SIDE, finding("type-too-small"));
        Remedy.Done done = assertInstanceOf(Remedy.Done.class, answer);
        done.command().execute();
        assertEquals("back", ((Side) line.eContainer().eContainer()).getName());
        done.command().undo();
        assertEquals(1, design.getSides().size());
    }

    private TextLine line(String id, String words, double y, double size) {
        TextLine line = DesignFactory.eINSTANCE.createTextLine();
        line.setId(id);
        line.setText(words);
        line.setY(y);
        line.setSize(size);
        line.setInk("navy");
        design.getSides().get(0).getLayers().get(0).getMarks().add(line);
        return line;
    }

    @Test
    void smallLinesMoveToTheBackAndBothSidesGrowToWhatFits() throws Exception {
        TextLine name = line("t1", "GULL", -5, 8);
        TextLine second = line("t2", "ferry line and bakery", 0, 1.3);
        TextLine hidden = line("t3", "draft", 2, 1.3);
        hidden.setHidden(true);
        cures(Fixes.MOVE_PROPOSED, finding("crowded-side"));
        double together = suite.fit(print(), "front", OptionalDouble.of(0)).orElseThrow().fit().scale();
        done(Fixes.MOVE_PROPOSED, finding("crowded-side")).execute();
        assertEquals(List.of("t1", "t3"), design.getSides().get(0).getLayers().get(0).getMarks().stream()
                .map(Mark::getId).toList());
        assertEquals("back", ((Side) second.eContainer().eContainer()).getName());
        assertTrue(name.getScale() >= together * (1 - 1e-5), "the name has the scale " + name.getScale());
        assertEquals(name.getScale(), hidden.getScale());
        assertTrue(second.getScale() > name.getScale());
        Printed now = print();
        for (String side : List.of("front", "back")) {
            assertEquals(1, suite.fit(now, side, OptionalDouble.of(0)).orElseThrow().fit().scale(), 1e-4);
            assertTrue(now.item().face(side).orElseThrow().safe().buffer(1e-6)
                    .covers(now.side(side).orElseThrow().printed()), side);
        }
    }

    @Test
    void whatMovesToABackWithAHiddenLayerIsSeen() throws Exception {
        line("t1", "GULL", -5, 8);
        TextLine second = line("t2", "ferry line and bakery", 0, 1.3);
        Side back = DesignFactory.eINSTANCE.createSide();
        back.setName("back");
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        layer.setHidden(true);
        back.getLayers().add(layer);
        design.getSides().add(back);
        cures(Fixes.MOVE_PROPOSED, finding("crowded-side"));
        done(Fixes.MOVE_PROPOSED, finding("crowded-side")).execute();
        assertEquals(back, second.eContainer().eContainer());
        assertTrue(print().side("back").isPresent());
    }

    @Test
    void oneMarkIsNotPartedAndSaysSo() throws Exception {
        PlainShape ring = DesignFactory.eINSTANCE.createPlainShape();
        ring.setId("ring");
        ring.setKind(ShapeKind.ELLIPSE);
        ring.setWidth(14);
        ring.setHeight(10);
        ring.setLineWidth(0.05);
        ring.setInk("navy");
        design.getSides().get(0).getLayers().get(0).getMarks().add(ring);
        Finding finding = finding("crowded-side");
        assertFalse(finding.fixes().contains(Fixes.MOVE_PROPOSED), finding.fixes().toString());
        assertInstanceOf(Remedy.Refused.class, new Remedies(suite, design, print()).apply(Fixes.MOVE_PROPOSED,
                finding));
    }

    @Test
    void aDarkInkOnADarkMaterialIsReplacedByOneThatStandsOut() throws Exception {
        place("");
        design.setMaterial("solid-black");
        cures(Fixes.NEAREST_INK, finding("weak-contrast"));
    }

    @Test
    void specksAreLeftOutAndNothingElse() throws Exception {
        Placement buoy = place("<circle cx='50' cy='15' r='0.5' fill='#1b3a5c'/>");
        cures(Fixes.DROP_SPECKS, finding("speck"));
        double whole = print().side("front").orElseThrow().printed().getArea();
        buoy.setLeaveOut(0.3);
        assertEquals(whole - Math.PI * 0.05 * 0.05, print().side("front").orElseThrow().printed().getArea(), 3e-4);
    }

    @Test
    void manyAtOnceMoveAMarkOnce() throws Exception {
        Placement buoy = place("<path d='M10 5h80v1.2h-80z M10 10h80v1.3h-80z' fill='#1b3a5c'/>");
        buoy.setScale(0.9);
        List<Finding> thin = findings("line-too-thin");
        assertTrue(thin.size() >= 2, thin.toString());
        // the mildest first: the worst must still decide
        List<Finding> mildest = new java.util.ArrayList<>(thin);
        java.util.Collections.reverse(mildest);
        Remedy answer = new Remedies(suite, design, print()).applyAll(Fixes.SCALE_UP, mildest);
        assertInstanceOf(Remedy.Done.class, answer).command().execute();
        assertEquals(List.of(), findings("line-too-thin"));
        assertEquals(0.9 * 1.002 * thin.get(0).limit().orElseThrow() / thin.get(0).measured().orElseThrow(),
                buoy.getScale(), 0.02);
        for (Mark mark : design.getSides().get(0).getLayers().get(0).getMarks()) {
            assertEquals(buoy, mark);
        }
    }

    /** A bar of 30 by 2 mm lies across; along the long axis of the pick more of it fits. */
    @Test
    void theBestTurnHoldsMoreThanLyingAsItIs() throws Exception {
        PlainShape bar = DesignFactory.eINSTANCE.createPlainShape();
        bar.setId("bar");
        bar.setKind(ShapeKind.RECTANGLE);
        bar.setWidth(30);
        bar.setHeight(2);
        bar.setInk("navy");
        design.getSides().get(0).getLayers().get(0).getMarks().add(bar);
        Finding finding = finding("art-off-edge");
        byte[] before = ModelFiles.DESIGNS.write(design);
        done(Fixes.PLACE_LARGEST, finding).execute();
        double asItLies = bar.getScale();
        assertEquals(0, bar.getTurn());
        Command turn = done(Fixes.BEST_TURN, finding);
        turn.execute();
        assertTrue(bar.getScale() > asItLies * 1.01, bar.getScale() + " is not more than " + asItLies);
        assertTrue(Math.abs(bar.getTurn()) > 10, "turned by " + bar.getTurn());
        Printed turned = print();
        assertTrue(turned.item().face("front").orElseThrow().safe().buffer(1e-6)
                .covers(turned.side("front").orElseThrow().printed()), "it left the safe zone");
        turn.undo();
        assertEquals(asItLies, bar.getScale());
        bar.setScale(1);
        bar.setX(0);
        bar.setY(0);
        assertArrayEquals(before, ModelFiles.DESIGNS.write(design));
    }

    private Command done(String remedy, Finding finding) throws Exception {
        Remedy answer = new Remedies(suite, design, print()).apply(remedy, finding);
        return assertInstanceOf(Remedy.Done.class, answer, answer::toString).command();
    }

    @Test
    void anUnknownRemedyIsRefused() throws Exception {
        place("").setX(9);
        assertInstanceOf(Remedy.Refused.class, new Remedies(suite, design, print()).apply("pray",
                finding("art-off-edge")));
    }

    /** Every area keeps its shape and takes the ink that was chosen in place of its own, by hand or by the suite. */
    @Test
    void anotherColourwayPrintsTheSameAreas() throws Exception {
        design.setMethod("pad-spot");
        design.getInks().add("red");
        Placement placement = place("<circle cx=\"50\" cy=\"50\" r=\"12\" fill=\"#c8202c\"/>");
        TextLine line = DesignFactory.eINSTANCE.createTextLine();
        line.setId("t1");
        line.setText("Bell");
        line.setFont("Liberation Sans");
        line.setSize(4);
        line.setY(-8);
        line.setInk("navy");
        design.getSides().get(0).getLayers().get(0).getMarks().add(line);
        Printed before = print();
        byte[] bytes = ModelFiles.DESIGNS.write(design);
        Command command = Colourway.of(design, before, "solid-black", Map.of("navy", "white", "red", "yellow"));
        command.execute();
        Printed after = print();
        assertEquals("solid-black", design.getMaterial());
        assertEquals(List.of("white", "yellow"), design.getInks());
        assertEquals("white", line.getInk());
        assertEquals(2, placement.getAssignments().size());
        for (String[] pair : new String[][] {{"navy", "white"}, {"red", "yellow"}}) {
            double had = area(before, pair[0]);
            assertTrue(had > 1, pair[0] + " printed " + had + " mm2");
            assertEquals(had, area(after, pair[1]), 1e-6, pair[1] + " in place of " + pair[0]);
            assertEquals(0, area(after, pair[0]));
        }
        command.undo();
        assertArrayEquals(bytes, ModelFiles.DESIGNS.write(design));
    }

    private static double area(Printed printed, String ink) {
        return printed.side("front").orElseThrow().regions().stream().filter(each -> each.ink().equals(ink))
                .mapToDouble(each -> each.area().getArea()).sum();
    }
}
