/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;
import org.pollex.artwork.svg.SvgReader;
import org.pollex.edit.Pose;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Side;
import org.pollex.print.DesignPrinter;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;
import org.pollex.rules.Contributions;
import org.pollex.rules.Finding;
import org.pollex.rules.Suite;

/** What is said of a mark while it is scaled is what the checks say once it is put down. */
class MarkMeasureTest {

    private static final double[] SCALES = {0.3, 0.45, 0.6, 0.8, 1, 1.3};
    private static final Pose[] TURNS = {new Pose(0, -1, 1, 0, false), new Pose(1, -2, 1, 30, false),
        new Pose(0, -3, 1, 75, true)};

    private record Body(String name, String svg) {
    }

    private static final List<Body> BODIES = List.of(
            new Body("bold", "<path d='M3 2h10v8H3z'/>"),
            new Body("line", "<path d='M2 6H14' stroke='black' stroke-width='.3'/><path d='M4 2h8v2H4z'/>"),
            new Body("gap", "<path d='M3 2h4.9v8H3z'/><path d='M8.2 2h4.9v8H8.2z'/>"),
            new Body("ring", "<circle cx='8' cy='6' r='4' fill='none' stroke='black' stroke-width='.35'/>"),
            new Body("slit", "<path d='M3 2h10v8H3zM5 5.8h6v.4H5z' fill-rule='evenodd'/>"),
            new Body("wedge", "<path d='M3 3L13 5L3 5.6z'/>"),
            new Body("sail", "<path d='M7.6 1.8V7.4L4.2 6z'/><path d='M3 8h10L11 10H5z'/>"),
            new Body("notch", "<path d='M3 2H13V10H3V6.4L11 6L3 5.8z'/>"),
            new Body("bridge", "<path d='M3 2h10v8H3zM4.5 4h3.3v4H4.5zM8.2 4h3.3v4H8.2z' fill-rule='evenodd'/>"));

    private static Suite suite;

    @BeforeAll
    static void install() {
        suite = Suite.of(Contributions.fromClassPath(MarkMeasureTest.class.getClassLoader()));
    }

    private static Printed printed(Body body, Pose pose) throws Exception {
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setProduct("standard-pick");
        design.setMaterial("solid-white");
        design.setMethod("pad-one-colour");
        design.getInks().add("black");
        Placement placement = DesignFactory.eINSTANCE.createPlacement();
        placement.setId("m1");
        placement.setArt("art/ferry.svg");
        placement.setX(pose.x());
        placement.setY(pose.y());
        placement.setScale(pose.scale());
        placement.setTurn(pose.turn());
        placement.setMirror(pose.mirror());
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        layer.getMarks().add(placement);
        Side front = DesignFactory.eINSTANCE.createSide();
        front.setName("front");
        front.getLayers().add(layer);
        design.getSides().add(front);
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='16mm' height='12mm' viewBox='0 0 16 12'>"
                + body.svg() + "</svg>";
        Art art = new SvgReader().read(new ArtSource("ferry.svg", svg.getBytes(StandardCharsets.UTF_8)),
                ReadLimits.usual());
        return new DesignPrinter(suite.item(design.getProduct()),
                suite.catalogues().material(design.getMaterial()).orElseThrow(),
                suite.catalogues().method(design.getMethod()).orElseThrow(),
                List.of(suite.catalogues().ink("black").orElseThrow()), any -> art, line -> {
                    throw new IllegalStateException("no line of text is set here");
                }).print(design);
    }

    private static List<Geometry> alone(Body body) throws Exception {
        return printed(body, new Pose(0, 0, 1, 0, false)).sides().get(0).regions().stream().map(InkRegion::area)
                .toList();
    }

    private static MarkMeasure measure(Body body) throws Exception {
        return MarkMeasure.of(alone(body), 1, Limits.of(suite.catalogues().method("pad-one-colour").orElseThrow(),
                suite.catalogues()));
    }

    private static OptionalDouble thinnest(List<Finding> found, String check) {
        return found.stream().filter(each -> each.check().equals(check) && each.measured().isPresent())
                .mapToDouble(each -> each.measured().getAsDouble()).min();
    }

    @TestFactory
    List<DynamicTest> sameAsTheChecks() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Body body : BODIES) {
            for (double scale : SCALES) {
                for (Pose at : TURNS) {
                    Pose pose = new Pose(at.x(), at.y(), scale, at.turn(), at.mirror());
                    tests.add(DynamicTest.dynamicTest(body.name() + " " + pose, () -> same(body, pose)));
                }
            }
        }
        return tests;
    }

    private static void same(Body body, Pose pose) throws Exception {
        List<ThinPlace> live = measure(body).places(pose.scale());
        List<Finding> found = suite.check(printed(body, pose));
        same(thinnest(found, "line-too-thin"), MarkMeasure.thinnest(live, false));
        same(thinnest(found, "gap-too-narrow"), MarkMeasure.thinnest(live, true));
    }

    private static void same(OptionalDouble exact, OptionalDouble live) {
        assertEquals(exact.isPresent(), live.isPresent(), "exact " + exact + ", live " + live);
        if (exact.isPresent()) {
            assertEquals(exact.getAsDouble(), live.getAsDouble(), 0.005);
        }
    }

    /** The designs above are of no use if none, or all, of them pass. */
    @Test
    void someAreTooThinAndSomeAreNot() throws Exception {
        int lines = 0;
        int gaps = 0;
        for (Body body : BODIES) {
            List<ThinPlace> small = measure(body).places(0.3);
            lines += MarkMeasure.thinnest(small, false).isPresent() ? 1 : 0;
            gaps += MarkMeasure.thinnest(small, true).isPresent() ? 1 : 0;
        }
        assertTrue(lines >= 3 && lines < BODIES.size(), "thin lines in " + lines);
        assertTrue(gaps >= 2 && gaps < BODIES.size(), "narrow gaps in " + gaps);
    }

    @Test
    void partsInAZoneAreThoseOfTheItem() throws Exception {
        Body body = BODIES.get(0);
        Pose pose = new Pose(4, 5, 0.9, 35, true);
        Geometry zone = new org.locationtech.jts.geom.GeometryFactory().toGeometry(
                new org.locationtech.jts.geom.Envelope(3, 9, 4, 9));
        AffineTransformation placing = ZoneParts.placing(pose);
        Geometry part = placing.transform(ZoneParts.in(alone(body), pose, zone));
        Geometry exact = printed(body, pose).sides().get(0).printed().intersection(zone);
        assertTrue(exact.getArea() > 1 && exact instanceof Polygon, exact::toString);
        assertEquals(0, exact.symDifference(part).getArea(), 1e-3);
    }
}
