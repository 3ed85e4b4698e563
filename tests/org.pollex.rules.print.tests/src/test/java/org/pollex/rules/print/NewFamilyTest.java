/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URL;
import java.net.URLClassLoader;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.catalogue.Family;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.model.catalogue.Product;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.ShapeKind;
import org.pollex.model.design.Side;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;
import org.pollex.print.PrintedMark;
import org.pollex.print.PrintedSide;
import org.pollex.print.PrintedType;
import org.pollex.print.item.Item;
import org.pollex.rules.CheckEntry;
import org.pollex.rules.Contributions;
import org.pollex.rules.Finding;
import org.pollex.rules.SideFit;
import org.pollex.rules.Suite;

/** One more bundle is all that a new family takes: it is listed, built and checked like those that are shipped. */
class NewFamilyTest {

    private static Suite suite;

    @BeforeAll
    static void install() {
        URL bundle = NewFamilyTest.class.getResource("/coaster/");
        suite = Suite.of(Contributions.fromClassPath(new URLClassLoader(new URL[] {bundle},
                NewFamilyTest.class.getClassLoader())));
    }

    @Test
    void isListedBesideTheOthers() {
        assertEquals(List.of(), suite.problems());
        assertEquals(List.of(), suite.catalogues().problems());
        assertTrue(suite.catalogues().families().stream().map(Family::getId).toList()
                .containsAll(List.of("pick", "coaster")));
        assertTrue(suite.catalogues().products().stream().map(Product::getId).toList()
                .containsAll(List.of("standard-pick", "small-coaster")));
        assertTrue(suite.catalogues().materials().stream().map(Material::getId).toList()
                .containsAll(List.of("solid-black", "cork")));
        assertTrue(suite.checks().stream().map(CheckEntry::id).toList()
                .containsAll(List.of("line-too-thin", "under-the-cup")));
    }

    private static Printed printed(Geometry black) throws Exception {
        Design design = DesignFactory.eINSTANCE.createDesign();
        Item item = suite.item("small-coaster");
        Method method = suite.catalogues().method("pad-one-colour").orElseThrow();
        PrintedSide top = new PrintedSide(item.face("top").orElseThrow(), List.of(new InkRegion("black", 0, black)),
                List.of(), List.of(), List.of(), List.of(), List.of());
        return new Printed(design, item, suite.catalogues().material("cork").orElseThrow(), method,
                List.of(suite.catalogues().ink("black").orElseThrow()), List.of(top));
    }

    @Test
    void isHeldAgainstItsOwnCheckAndEveryOther() throws Exception {
        List<Finding> found = suite.check(printed(Shape.parse("disc 0 0 20 plus rect 0 12 30 0.1 plus rect 17 0 2 2")));
        assertEquals(List.of("line-too-thin", "under-the-cup", "art-in-wear"), found.stream().map(Finding::check)
                .filter(List.of("line-too-thin", "under-the-cup", "art-in-wear")::contains).distinct().toList());
        assertTrue(found.stream().noneMatch(finding -> finding.kind().equals("not-run")), found::toString);
        assertTrue(found.stream().allMatch(finding -> finding.side().equals("top")), found::toString);
    }

    @Test
    void cleanOneIsClean() throws Exception {
        assertEquals(List.of(), suite.check(printed(Shape.parse("disc 0 0 29.5 minus disc 0 0 22"))));
    }

    /** It is printed on one side: nothing is offered to be moved to another. */
    @Test
    void aCrowdedOneHasNoOtherSide() throws Exception {
        Geometry name = Shape.parse("rect 0 -1 26 5");
        Geometry small = Shape.parse("rect 0 4 9 0.8");
        Printed crowded = printed(Polygons.union(name, small));
        PrintedSide side = crowded.sides().get(0);
        Printed lettered = new Printed(crowded.design(), crowded.item(), crowded.material(), crowded.method(),
                crowded.inks(), List.of(new PrintedSide(side.face(), side.regions(), List.of(
                        new PrintedMark("a", "GULL", name, true), new PrintedMark("b", "bakery", small, true)),
                        List.of(new PrintedType("b", "bakery", 0.8, 0.4, small)), List.of(), List.of(), List.of())));
        Finding finding = suite.check(lettered).stream().filter(each -> each.check().equals("crowded-side")).findFirst()
                .orElseThrow();
        assertEquals("detail", finding.kind());
        assertEquals(List.of(), finding.fixes());
        assertTrue(finding.message().endsWith("larger than fits. \"bakery\" needs 1.8 times, cut words."),
                finding.message());
    }

    @Test
    void isPrintedLikeEveryOther() throws Exception {
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setProduct("small-coaster");
        design.setMaterial("cork");
        design.setMethod("pad-one-colour");
        design.getInks().add("black");
        Side top = DesignFactory.eINSTANCE.createSide();
        top.setName("top");
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        PlainShape disc = DesignFactory.eINSTANCE.createPlainShape();
        disc.setId("disc");
        disc.setKind(ShapeKind.ELLIPSE);
        disc.setWidth(18);
        disc.setHeight(18);
        disc.setInk("black");
        layer.getMarks().add(disc);
        top.getLayers().add(layer);
        design.getSides().add(top);
        Printed printed = suite.printer(design, placement -> {
            throw new IllegalStateException("no art is placed");
        }, line -> {
            throw new IllegalStateException("no line is set");
        }).print(design);
        assertEquals(Math.PI * 81, printed.side("top").orElseThrow().printed().getArea(), 0.1);
        assertEquals(List.of("fit-poor", "under-the-cup"),
                suite.check(printed).stream().map(Finding::check).toList());
        suite.fit(printed, "top", OptionalDouble.of(0)).orElseThrow().moved(top).forEach(SideFit.Moved::apply);
        assertEquals(30.0 / 18, disc.getScale(), 1e-3);
    }

    @Test
    void itsCheckLeavesPicksAlone() throws Exception {
        Item pick = suite.item("standard-pick");
        PrintedSide front = new PrintedSide(pick.faces().get(0), List.of(new InkRegion("black", 0,
                Shape.parse("disc 0 0 8"))), List.of(), List.of(), List.of(), List.of(), List.of());
        Printed printed = new Printed(DesignFactory.eINSTANCE.createDesign(), pick,
                suite.catalogues().material("solid-white").orElseThrow(),
                suite.catalogues().method("pad-one-colour").orElseThrow(),
                List.of(suite.catalogues().ink("black").orElseThrow()), List.of(front));
        assertTrue(suite.check(printed).stream().noneMatch(finding -> finding.check().equals("under-the-cup")));
    }
}
