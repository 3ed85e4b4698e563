/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pollex.print.Studio.art;
import static org.pollex.print.Studio.box;
import static org.pollex.print.Studio.fill;

import java.awt.geom.Path2D;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.FillRule;
import org.pollex.artwork.font.ShippedFont;
import org.pollex.artwork.font.ShippedFonts;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.ShapeKind;
import org.pollex.model.design.TextLine;

class PlainMarksTest {

    private static final int RED = 0xd02020;

    private static PlainShape shape(ShapeKind kind, double width, double height, double line, String ink) {
        PlainShape shape = DesignFactory.eINSTANCE.createPlainShape();
        shape.setKind(kind);
        shape.setWidth(width);
        shape.setHeight(height);
        shape.setLineWidth(line);
        shape.setInk(ink);
        return shape;
    }

    private static double area(PlainShape shape) throws Exception {
        Studio studio = new Studio(0xffffff, "red", RED);
        studio.add("front", shape);
        PrintedSide side = studio.front();
        assertTrue(side.ink("red").isValid());
        assertEquals(side.ink("red").getArea(), side.marks().get(0).area().getArea(), 1e-9);
        return side.ink("red").getArea();
    }

    @Test
    void boxesAndEllipses() throws Exception {
        assertEquals(12, area(shape(ShapeKind.RECTANGLE, 4, 3, 0, "red")), 1e-9);
        assertEquals(4.5 * 3.5 - 3.5 * 2.5, area(shape(ShapeKind.RECTANGLE, 4, 3, 0.5, "red")), 1e-9);
        assertEquals(7 * 6, area(shape(ShapeKind.RECTANGLE, 4, 3, 3, "red")), 1e-9);
        assertEquals(Math.PI * 6, area(shape(ShapeKind.ELLIPSE, 6, 4, 0, "red")), 0.02);
    }

    /** Annulus: 2 pi r w. A band round a convex curve has its length times the width, however flat the curve. */
    @Test
    void ringsHaveTheAreaOfTheirBand() throws Exception {
        assertEquals(2 * Math.PI * 5 * 0.4, area(shape(ShapeKind.ELLIPSE, 10, 10, 0.4, "red")), 1e-3);
        double a = 5;
        double b = 2;
        double length = 0;
        for (int i = 0; i < 100_000; i++) {
            double t = 2 * Math.PI * (i + 0.5) / 100_000;
            length += Math.hypot(a * Math.sin(t), b * Math.cos(t)) * 2 * Math.PI / 100_000;
        }
        assertEquals(length * 0.4, area(shape(ShapeKind.ELLIPSE, 2 * a, 2 * b, 0.4, "red")), 1e-3);
    }

    /** The inner parallel of a flat ellipse folds over at its ends: the band stays whole there. */
    @Test
    void aBandWiderThanTheCurveAllowsHasNoHolesInIt() throws Exception {
        Studio studio = new Studio(0xffffff, "red", RED);
        studio.add("front", shape(ShapeKind.ELLIPSE, 10, 3, 2, "red"));
        Geometry band = studio.front().ink("red");
        assertEquals(1, band.getNumGeometries());
        assertEquals(1, ((Polygon) band).getNumInteriorRing());
        Geometry edge = new GeometryFactory()
                .createLineString(IntStream.rangeClosed(0, 2000).mapToObj(i ->
                        new Coordinate(5 * Math.cos(i * Math.PI / 1000),
                                1.5 * Math.sin(i * Math.PI / 1000)))
                        .toArray(Coordinate[]::new));
        assertEquals(edge.buffer(1, 64).getArea(), band.getArea(), 0.01);
    }

    @Test
    void impossibleShapesAreRefused() {
        for (double[] size : new double[][] {{0, 1, 0}, {1, -1, 0}, {1, 1, -0.1}, {1, Double.NaN, 0}}) {
            assertThrows(PrintException.class, () -> area(shape(ShapeKind.RECTANGLE, size[0], size[1], size[2],
                    "red")));
        }
    }

    @Test
    void aBareShapeKnocksOutAndHasAnArea() throws Exception {
        Studio studio = new Studio(0xffffff, "red", RED);
        studio.place(art("a.svg", fill(RED, box(0, 0, 20, 20))));
        studio.add("front", shape(ShapeKind.RECTANGLE, 4, 3, 0, ColourMatch.BARE));
        PrintedSide side = studio.front();
        assertEquals(388, side.ink("red").getArea(), 1e-9);
        assertEquals(12, side.marks().get(1).area().getArea(), 1e-9);
    }

    @Test
    void aShapeWithAnUnknownInkPrintsInTheFirstAndIsTold() throws Exception {
        Studio studio = new Studio(0xffffff, "red", RED, "blue", 0x2040c0);
        studio.add("front", shape(ShapeKind.RECTANGLE, 4, 3, 0, "gold"));
        PrintedSide side = studio.front();
        assertEquals("red=12.00", Studio.inks(side));
        assertTrue(side.notices().get(0).notice().message().contains("\"gold\""));
    }

    @Test
    void aLineOfTextIsSetAboutItsMiddleAndMeasuredAtItsFinalSize() throws Exception {
        ShippedFont font = ShippedFonts.standard().match("sans-serif", false, false).font();
        Studio studio = new Studio(0xffffff, "red", RED);
        studio.letterBy(line -> new Lettering.SetLine(font.outline(line.getText(), line.getSize()),
                font.xHeight(line.getSize()), ""));
        TextLine line = DesignFactory.eINSTANCE.createTextLine();
        line.setText("xox");
        line.setSize(4);
        line.setScale(0.5);
        line.setX(3);
        line.setY(-2);
        line.setInk("red");
        studio.add("front", line);
        PrintedSide side = studio.front();
        Envelope box = side.ink("red").getEnvelopeInternal();
        assertEquals(3, (box.getMinX() + box.getMaxX()) / 2, 0.01);
        assertEquals(-2, (box.getMinY() + box.getMaxY()) / 2, 0.01);
        PrintedType type = side.types().get(0);
        assertEquals("xox", type.text());
        assertEquals(2, type.size(), 1e-12);
        assertEquals(font.xHeight(2), type.xHeight(), 1e-12);
        assertEquals(box.getHeight(), type.where().getEnvelopeInternal().getHeight(), 0.01);
        assertTrue(side.marks().get(0).text());
    }

    @Test
    void blanksAndEmptyOutlinesPrintNothing() throws Exception {
        Studio studio = new Studio(0xffffff, "red", RED);
        studio.letterBy(line -> new Lettering.SetLine(ArtPath.of(new Path2D.Double(),
                FillRule.NON_ZERO), 1, "The font Harbour stands in."));
        TextLine line = DesignFactory.eINSTANCE.createTextLine();
        line.setText("  ");
        line.setInk("red");
        studio.add("front", line);
        PrintedSide side = studio.front();
        assertTrue(side.regions().isEmpty());
        assertTrue(side.types().isEmpty());
        assertTrue(side.marks().get(0).area().isEmpty());
        assertEquals("The font Harbour stands in.", side.notices().get(0).notice().message());
    }
}
