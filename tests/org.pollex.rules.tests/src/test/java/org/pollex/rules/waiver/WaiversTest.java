/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.waiver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.job.Waiver;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;

/** A waiver outlasts rounding and changes elsewhere, and ends with the place it was given for. */
class WaiversTest {

    private static final Instant NOON = Instant.parse("2026-05-01T12:00:00Z");

    private static Finding finding(String check, String side, String region, double x, double width) {
        return finding(check, side, region, Polygons.factory().createLineString(
                new Coordinate[] {new Coordinate(x, 1), new Coordinate(x + 4, 1)}), OptionalDouble.of(width));
    }

    private static Finding finding(String check, String side, String region, Geometry where, OptionalDouble measured) {
        return new Finding(check, "line", Severity.ERROR, side, region, measured, OptionalDouble.of(0.15), "mm", where,
                "A line is thin.", List.of(), false);
    }

    private static boolean covers(Finding given, Finding later) {
        Waiver waiver = Waivers.waive(given, "front.design", "meant as a hairline", "Ida Lund", NOON);
        return Waivers.apply(List.of(later), "front.design", List.of(waiver)).get(0).waived();
    }

    private final Finding given = finding("line-too-thin", "front", "black", 2, 0.1);

    @Test
    void coversTheSamePlaceAndWhatRoundingMakesOfIt() {
        assertTrue(covers(given, given));
        assertTrue(covers(given, finding("line-too-thin", "front", "black", 2.004, 0.1003)));
        // Right and left of what a grid of 0.01 would part.
        assertTrue(covers(finding("line-too-thin", "front", "black", 2.00499, 0.1), finding("line-too-thin", "front",
                "black", 2.00501, 0.1)));
    }

    @Test
    void endsWhenThePlaceOrItsMeasureChanges() {
        assertFalse(covers(given, finding("line-too-thin", "front", "black", 2.2, 0.1)));
        assertFalse(covers(given, finding("line-too-thin", "front", "black", 2, 0.08)));
        assertFalse(covers(given, finding("line-too-thin", "back", "black", 2, 0.1)));
        assertFalse(covers(given, finding("line-too-thin", "front", "red", 2, 0.1)));
        assertFalse(covers(given, finding("gap-too-narrow", "front", "black", 2, 0.1)));
        assertFalse(covers(given, finding("line-too-thin", "front", "black", Polygons.empty(),
                OptionalDouble.of(0.1))));
        assertFalse(covers(given, finding("line-too-thin", "front", "black", given.where(),
                OptionalDouble.empty())));
    }

    @Test
    void coversFindingsWithoutPlaceOrMeasure() {
        Finding whole = finding("art-unsupported", "", "", Polygons.empty(), OptionalDouble.empty());
        assertTrue(covers(whole, whole));
    }

    @Test
    void belongsToOneDesign() {
        Waiver waiver = Waivers.waive(given, "front.design", "meant", "Ida Lund", NOON);
        assertEquals("front.design", waiver.getDesign());
        assertEquals("line-too-thin", waiver.getCheck());
        assertEquals(NOON, waiver.getWhen());
        assertFalse(Waivers.apply(List.of(given), "other.design", List.of(waiver)).get(0).waived());
    }

    @Test
    void leavesEverythingElseOfAFindingAlone() {
        Waiver waiver = Waivers.waive(given, "a.design", "meant", "Ida Lund", NOON);
        Finding waived = Waivers.apply(List.of(given), "a.design", List.of(waiver)).get(0);
        assertEquals(new Finding(given.check(), given.kind(), given.severity(), given.side(), given.region(),
                given.measured(), given.limit(), given.unit(), given.where(), given.message(), given.fixes(), true),
                waived);
        assertEquals(given, Waivers.apply(List.of(waived), "a.design",
                List.of(Waivers.waive(finding("speck", "front", "black", 0, 1), "a.design", "x", "y", NOON))).get(0));
    }

    @Test
    void whatCannotBeUnderstoodCoversNothing() {
        for (String text : new String[] {"", "nonsense", "2;line;black;0 0 1 1;0.1", "1;line;black;a b;0.1",
            "1;line;black;0 0 1 1;x"}) {
            Waiver waiver = Waivers.waive(given, "a.design", "meant", "Ida Lund", NOON);
            waiver.setFingerprint(text);
            assertFalse(Waivers.apply(List.of(given), "a.design", List.of(waiver)).get(0).waived(), text);
        }
        Waiver empty = Waivers.waive(given, "a.design", "meant", "Ida Lund", NOON);
        empty.setFingerprint(null);
        assertFalse(Waivers.apply(List.of(given), "a.design", List.of(empty)).get(0).waived());
    }

    @Test
    void asksWhyAndWho() {
        assertThrows(IllegalArgumentException.class, () -> Waivers.waive(given, "a.design", " ", "Ida Lund", NOON));
        assertThrows(IllegalArgumentException.class, () -> Waivers.waive(given, "a.design", "meant", "", NOON));
        Finding notRun = new Finding("speck", "not-run", Severity.WARNING, "", "", OptionalDouble.empty(),
                OptionalDouble.empty(), "", Polygons.empty(), "Could not be run.", List.of(), false);
        assertThrows(IllegalArgumentException.class, () -> Waivers.waive(notRun, "a.design", "x", "y", NOON));
    }
}
