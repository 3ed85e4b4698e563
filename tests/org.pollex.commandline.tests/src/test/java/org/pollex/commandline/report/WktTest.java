/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.report;

import org.pollex.output.report.Plain;
import org.pollex.output.report.Plain;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.io.WKTWriter;

/** Held against the writer of JTS, which knows the standard. */
class WktTest {

    private static String reference(Geometry geometry) {
        WKTWriter writer = new WKTWriter();
        writer.setPrecisionModel(new PrecisionModel(10_000));
        return writer.write(geometry);
    }

    @ParameterizedTest
    @ValueSource(strings = {"POINT (1 2)", "POINT EMPTY", "LINESTRING (0 0, 1 1.5, -3.25 0.0001)",
        "POLYGON ((0 0, 9 0, 9 9, 0 9, 0 0), (1 1, 2 1, 2 2, 1 1))", "POLYGON EMPTY",
        "MULTIPOINT ((1 1), (2 2))", "MULTILINESTRING ((0 0, 1 1), (2 2, 3 3))",
        "MULTIPOLYGON (((0 0, 1 0, 1 1, 0 0)), ((5 5, 6 5, 6 6, 5 5)))",
        "GEOMETRYCOLLECTION (POINT (1 2), LINESTRING (0 0, 1 1))", "GEOMETRYCOLLECTION EMPTY"})
    void writesEveryKind(String wkt) throws Exception {
        Geometry geometry = new WKTReader().read(wkt);
        assertEquals(wkt, Plain.wkt(geometry));
        assertEquals(reference(geometry), Plain.wkt(geometry));
    }

    @Test
    void roundsAsOtherNumbersOfReports() {
        Random random = new Random(11);
        GeometryFactory factory = new GeometryFactory();
        for (int i = 0; i < 5000; i++) {
            double size = Math.pow(10, random.nextInt(12) - 5);
            double x = (random.nextDouble() - 0.5) * size;
            double y = (random.nextDouble() - 0.5) * size;
            assertEquals("POINT (" + Plain.number(x) + " " + Plain.number(y) + ")",
                    Plain.wkt(factory.createPoint(new Coordinate(x, y))));
        }
    }

    @Test
    void writesNumbersOfAnySizePlainly() {
        GeometryFactory factory = new GeometryFactory();
        assertEquals("POINT (1000000000000000000 0)", Plain.wkt(factory.createPoint(new Coordinate(1e18, -1e-9))));
        assertEquals("LINESTRING (0 0, 1 0, 0 1, 0 0)", Plain.wkt(factory.createLinearRing(new Coordinate[] {
            new Coordinate(0, 0), new Coordinate(1, 0), new Coordinate(0, 1), new Coordinate(0, 0)})));
    }
}
