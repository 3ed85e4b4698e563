/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.geometry.outline.Outline;
import org.pollex.geometry.outline.RoundedTriangle;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Face;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.model.catalogue.Product;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;
import org.pollex.print.PrintedMark;
import org.pollex.print.PrintedSide;
import org.pollex.print.item.Item;
import org.pollex.print.item.ItemFace;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;

/** A pick with plain shapes on it, put together without any reader, printer or check. */
public final class SampleDesign {

    public static final GeometryFactory FACTORY = new GeometryFactory();

    private final Material material = CatalogueFactory.eINSTANCE.createMaterial();
    private final Method method = CatalogueFactory.eINSTANCE.createMethod();
    private final List<Ink> inks = new ArrayList<>();
    private final List<InkRegion> front = new ArrayList<>();
    private final List<InkRegion> back = new ArrayList<>();
    private String name = "Harbour light";
    private double width = 26;
    private double height = 31;

    /** Colours of the two inks over the black card. */
    public static final Lab RED_OVER_BLACK = new Lab(38, 50, 30);
    public static final Lab WHITE_OVER_BLACK = new Lab(84, -1, -1);

    public SampleDesign() {
        method.setId("spot-pad");
        method.setName("Spot colour pad print");
        method.setLineMin(0.15);
        method.setGapMin(0.2);
        method.setLineMinReversed(0.18);
        method.setGapMinReversed(0.2);
        method.setTypeMin(1);
        method.setEdge(1);
        method.setInksMax(4);
        method.setResolution(1200);
        material("Black", "18 0 0");
        ink("signal-red", "Signal red", "48 64 40", "38 50 30");
        ink("white", "White", "95 0 2", "84 -1 -1");
    }

    public SampleDesign material(String called, String lab) {
        material.setId(called.toLowerCase().replace(' ', '-'));
        material.setName(called);
        material.setLab(LabColour.parse(lab));
        return this;
    }

    /** How clear the material is, 0 to 1; the front is seen from the front and the back from behind. */
    public SampleDesign clear(double translucency) {
        material.setTranslucency(translucency);
        return this;
    }

    public SampleDesign named(String text) {
        name = text;
        return this;
    }

    public SampleDesign size(double wide, double high) {
        width = wide;
        height = high;
        return this;
    }

    public Method method() {
        return method;
    }

    public SampleDesign ink(String id, String called, String lab, String overBlack) {
        Ink ink = CatalogueFactory.eINSTANCE.createInk();
        ink.setId(id);
        ink.setName(called);
        ink.setLab(LabColour.parse(lab));
        ink.setLabOverBlack(LabColour.parse(overBlack));
        inks.add(ink);
        return this;
    }

    public SampleDesign front(String ink, int rgb, Geometry area) {
        front.add(new InkRegion(ink, rgb, area));
        return this;
    }

    public SampleDesign back(String ink, int rgb, Geometry area) {
        back.add(new InkRegion(ink, rgb, area));
        return this;
    }

    public Printed printed() {
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setName(name);
        design.setProduct("standard-pick");
        design.setMaterial(material.getId());
        design.setMethod(method.getId());
        Product product = CatalogueFactory.eINSTANCE.createProduct();
        product.setId("standard-pick");
        product.setName("Standard pick");
        product.setThickness(0.81);
        for (String face : List.of("front", "back")) {
            Face printed = CatalogueFactory.eINSTANCE.createFace();
            printed.setName(face);
            printed.setMirrored(face.equals("back"));
            product.getFaces().add(printed);
        }
        Item item = new Item(product, width, height, List.of(face("front"), face("back")));
        List<PrintedSide> sides = new ArrayList<>();
        add(sides, item, "front", front);
        add(sides, item, "back", back);
        return new Printed(design, item, material, method, inks, sides);
    }

    private static void add(List<PrintedSide> sides, Item item, String face, List<InkRegion> regions) {
        if (!regions.isEmpty()) {
            sides.add(new PrintedSide(item.face(face).orElseThrow(), regions,
                    List.of(new PrintedMark("m1", "lighthouse.svg", regions.get(0).area(), false)), List.of(),
                    List.of(), List.of(), List.of()));
        }
    }

    private ItemFace face(String called) {
        Outline outline = RoundedTriangle.outline(RoundedTriangle.Dimensions.symmetric(width, height,
                width * 0.16, width * 0.1, 1.2, 1.5));
        Polygon area = outline.flatten();
        Geometry inner = area.buffer(-1);
        Geometry tip = disc(0, height / 2, height * 0.3);
        return new ItemFace(called, outline, area, inner.difference(tip), inner.intersection(tip),
                area.difference(inner), 1, (x, y) -> y > 8 ? 1 : 0);
    }

    public static Geometry disc(double x, double y, double radius) {
        return FACTORY.createPoint(new Coordinate(x, y)).buffer(radius, 32);
    }

    public static Geometry box(double x, double y, double wide, double high) {
        return FACTORY.toGeometry(new org.locationtech.jts.geom.Envelope(x, x + wide, y, y + high));
    }

    public static Geometry star(double x, double y, double outer, double inner, int points) {
        Coordinate[] corners = new Coordinate[2 * points + 1];
        for (int i = 0; i <= 2 * points; i++) {
            double r = i % 2 == 0 ? outer : inner;
            double a = Math.PI * (i % (2 * points)) / points - Math.PI / 2;
            corners[i] = new Coordinate(x + r * Math.cos(a), y + r * Math.sin(a));
        }
        return FACTORY.createPolygon(corners);
    }

    /** Two inks on both sides. */
    public static SampleDesign twoSided() {
        Geometry star = star(0, -3, 8, 4.2, 8);
        Geometry core = disc(0, -3, 3);
        Geometry waves = AffineTransformation.translationInstance(0, 4).transform(box(-5, 0, 10, 0.12)
                .union(box(-4, 1, 8, 0.8)));
        return new SampleDesign().front("white", 0x101010, star.difference(core))
                .front("signal-red", 0xd02020, core).front("white", 0x101010, waves)
                .back("white", 0x101010, star(0, -4, 7, 3, 5)).back("signal-red", 0xd02020, disc(0, 6, 2.5));
    }

    public static Finding finding(int number, Severity severity, String side, double x, double y) {
        return new Finding("line-too-thin", "line", severity, side, "white", OptionalDouble.of(0.12),
                OptionalDouble.of(0.15), "mm", disc(x, y, 0.4), "A line of white is 0.12 mm wide, thinner than the "
                + "0.15 mm that the method holds (place " + number + "); make it wider or enlarge the art.",
                List.of("thicken"), false);
    }

    public static int rgb(String lab) {
        LabColour colour = LabColour.parse(lab);
        return Srgb.of(new org.pollex.colour.Lab(colour.l(), colour.a(), colour.b()));
    }
}
