/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;
import org.pollex.artwork.svg.SvgReader;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Side;
import org.pollex.print.DesignPrinter;
import org.pollex.print.Printed;
import org.pollex.rules.Contributions;
import org.pollex.rules.Finding;
import org.pollex.rules.SideFit;
import org.pollex.rules.Suite;

/** From a client's SVG to findings: reader, printer and checks together. */
class DesignChecksTest {

    private static Suite suite;

    @BeforeAll
    static void install() {
        suite = Suite.of(Contributions.fromClassPath(DesignChecksTest.class.getClassLoader()));
    }

    private static Design design(String material, String method, String... inks) {
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setProduct("standard-pick");
        design.setMaterial(material);
        design.setMethod(method);
        design.getInks().addAll(List.of(inks));
        Side front = DesignFactory.eINSTANCE.createSide();
        front.setName("front");
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        Placement placement = DesignFactory.eINSTANCE.createPlacement();
        placement.setId("m1");
        placement.setArt("art/ferry.svg");
        placement.setY(-3);
        layer.getMarks().add(placement);
        front.getLayers().add(layer);
        design.getSides().add(front);
        return design;
    }

    private static Printed printed(Design design, String body) throws Exception {
        String svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"16mm\" height=\"12mm\" viewBox=\"0 0 16 12\">"
                + body + "</svg>";
        Art art = new SvgReader().read(new ArtSource("ferry.svg", svg.getBytes(StandardCharsets.UTF_8)),
                ReadLimits.usual());
        List<Ink> inks = design.getInks().stream().map(id -> suite.catalogues().ink(id).orElseThrow()).toList();
        return new DesignPrinter(suite.item(design.getProduct()),
                suite.catalogues().material(design.getMaterial()).orElseThrow(),
                suite.catalogues().method(design.getMethod()).orElseThrow(), inks, placement -> art, line -> {
                    throw new IllegalStateException("no line of text is set here");
                }).print(design);
    }

    private static List<Finding> found(Design design, String body) throws Exception {
        List<Finding> found = suite.check(printed(design, body));
        assertTrue(found.stream().noneMatch(finding -> finding.kind().equals("not-run")), found::toString);
        return found;
    }

    private static List<String> checks(List<Finding> found) {
        return found.stream().map(Finding::check).distinct().toList();
    }

    @Test
    void soundArtThatFillsThePickIsClean() throws Exception {
        Design design = design("solid-white", "pad-one-colour", "black");
        String body = "<circle cx='8' cy='6' r='5.5' fill='none' stroke='black' stroke-width='.5'/>"
                + "<path d='M4 7h8l-1.5 2h-5z'/>";
        Printed first = printed(design, body);
        SideFit fit = suite.fit(first, "front", OptionalDouble.of(0)).orElseThrow();
        fit.moved(design.getSides().get(0)).forEach(SideFit.Moved::apply);
        assertEquals(List.of(), found(design, body));
        assertTrue(fit.fit().scale() > 1.7, "scale " + fit.fit().scale());
    }

    @Test
    void hairlineOfAStrokeIsFoundWhereItIs() throws Exception {
        List<Finding> found = found(design("solid-white", "pad-one-colour", "black"),
                "<path d='M2 6H14' stroke='black' stroke-width='.1'/><path d='M2 2h12v2H2z'/>");
        Finding thin = found.stream().filter(finding -> finding.check().equals("line-too-thin")).findFirst()
                .orElseThrow();
        assertEquals(0.1, thin.measured().orElseThrow(), 0.001);
        // The middle of the page is the origin of the mark, which lies 3 mm above the middle of the pick.
        assertEquals(-3, thin.where().getCoordinate().y, 0.01);
        assertEquals("black", thin.region());
    }

    @Test
    void coloursThatTouchAndMeltAreFoundInOneInk() throws Exception {
        String body = "<path d='M2 2h6v8H2z' fill='#203080'/><path d='M8 2h6v8H8z' fill='#000'/>";
        List<Finding> one = found(design("solid-white", "pad-one-colour", "black"), body);
        Finding melted = one.stream().filter(finding -> finding.kind().equals("melted")).findFirst().orElseThrow();
        assertEquals(0, melted.where().getEnvelopeInternal().getWidth(), 0.001);
        assertEquals(8, melted.where().getLength(), 0.001);
        List<Finding> two = found(design("solid-white", "pad-spot", "navy", "red", "black"), body);
        assertTrue(two.stream().noneMatch(finding -> finding.kind().equals("melted")), two::toString);
    }

    @Test
    void whiteOverBlackIsAnOpening() throws Exception {
        List<Finding> found = found(design("solid-yellow", "pad-one-colour", "black"),
                "<path d='M2 2h12v8H2z'/><path d='M4 6h8' stroke='#fff' stroke-width='.12'/>");
        Finding slit = found.stream().filter(finding -> finding.check().equals("gap-too-narrow")).findFirst()
                .orElseThrow();
        assertEquals("counter", slit.kind());
        assertEquals(0.12, slit.measured().orElseThrow(), 0.0015);
        assertEquals(0.2, slit.limit().orElseThrow(), 1e-9);
    }

    @Test
    void colourWithoutAnInkIsToldWithANearerOne() throws Exception {
        List<Finding> found = found(design("solid-white", "pad-spot", "black", "red"),
                "<path d='M2 2h6v8H2z' fill='#000'/><path d='M9 2h5v8H9z' fill='#2060c0'/>");
        assertTrue(found.stream().anyMatch(finding -> finding.check().equals("ink-unmatched")
                && finding.message().contains("the ink blue would come nearer")), found::toString);
    }

    @Test
    void artThatIsTooLargeIsCutAndWorn() throws Exception {
        Design design = design("solid-white", "pad-one-colour", "black");
        Mark mark = design.getSides().get(0).getLayers().get(0).getMarks().get(0);
        mark.setScale(2.6);
        mark.setY(0);
        List<Finding> found = found(design, "<path d='M1 1h14v10H1z'/>");
        assertTrue(checks(found).containsAll(List.of("art-off-edge", "art-in-wear")), found::toString);
        assertTrue(found.stream().noneMatch(finding -> finding.check().equals("fit-poor")
                && finding.kind().equals("small")), found::toString);
    }

    @Test
    void whatTheReaderSaysIsPassedOn() throws Exception {
        List<Finding> found = found(design("solid-white", "pad-one-colour", "black"),
                "<defs><linearGradient id='g'><stop stop-color='#000'/><stop offset='1' stop-color='#555'/>"
                        + "</linearGradient></defs><path d='M2 2h12v8H2z' fill='url(#g)'/>");
        assertTrue(found.stream().anyMatch(finding -> finding.check().equals("art-unsupported")
                && finding.message().contains("gradient")), found::toString);
    }
}
