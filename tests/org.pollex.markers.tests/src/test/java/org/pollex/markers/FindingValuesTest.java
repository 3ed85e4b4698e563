/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.markers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.io.WKTReader;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;
import org.pollex.rules.waiver.Waivers;

/** A finding comes out of a marker as it went in. */
class FindingValuesTest {

    private static Finding finding(Geometry where, boolean waived) {
        return new Finding("line-too-thin", "neck", Severity.WARNING, "back", "navy", OptionalDouble.of(0.1234),
                OptionalDouble.of(0.15), "mm", where, "A neck is thin; thicken it.",
                List.of("scale-up", "pray"), waived);
    }

    @Test
    void outAsItWentIn() throws Exception {
        Finding in = finding(new WKTReader().read("LINESTRING (1 2, 3.25 4.5)"), false);
        Map<String, Object> values = FindingValues.of(in, "Line too thin");
        assertEquals(in, FindingValues.finding(values));
        assertEquals("back, x 2.1 y 3.3 mm", values.get("location"));
        assertEquals(1, values.get("severity"));
        assertEquals("Line too thin", values.get("checkName"));
        assertEquals(Waivers.fingerprint(in), values.get("fingerprint"));
    }

    @Test
    void aWaivedOneIsInformationAndSaysSo() throws Exception {
        Finding in = finding(new WKTReader().read("POINT (1 2)"), true);
        Map<String, Object> values = FindingValues.of(in, "Line too thin");
        assertEquals(0, values.get("severity"));
        assertEquals("Waived: A neck is thin; thicken it.", values.get("message"));
        assertEquals(in, FindingValues.finding(values));
    }

    @Test
    void withoutAPlaceOrANumber() {
        Finding in = new Finding("no-ink", "", Severity.ERROR, "", "", OptionalDouble.empty(), OptionalDouble.empty(),
                "", new GeometryFactory().createPoint(), "No ink.", List.of(), false);
        Map<String, Object> values = FindingValues.of(in, "No ink");
        assertEquals(in, FindingValues.finding(values));
        assertEquals("", values.get("location"));
        assertTrue(!values.containsKey("measured") && !values.containsKey("limit"));
    }

    /** A marker holds 65,535 bytes for each attribute; a place with more corners than that is kept as its box. */
    @Test
    void aPlaceOfManyCornersIsKeptAsItsBoxWithTheSameFingerprint() {
        Coordinate[] corners = new Coordinate[6000];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = new Coordinate(i / 1000.0 + 0.000123456, Math.sin(i));
        }
        Finding in = finding(new GeometryFactory().createLineString(corners), false);
        Map<String, Object> values = FindingValues.of(in, "Line too thin");
        for (Map.Entry<String, Object> each : values.entrySet()) {
            assertTrue(String.valueOf(each.getValue()).getBytes(StandardCharsets.UTF_8).length <= 65_535,
                    each.getKey());
        }
        Finding out = FindingValues.finding(values);
        assertEquals(in.where().getEnvelopeInternal(), out.where().getEnvelopeInternal());
        assertEquals(values.get("fingerprint"), Waivers.fingerprint(out));
    }

    @Test
    void attributesOfSomethingElseAreAnEmptyFinding() {
        Finding out = FindingValues.finding(Map.of("message", "Something else.", "where", "no geometry"));
        assertEquals("", out.check());
        assertEquals(Severity.INFO, out.severity());
        assertTrue(out.where().isEmpty());
    }
}
