/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.report;

import org.pollex.output.report.CheckedDesign;
import org.pollex.output.report.JsonReport;
import org.pollex.output.report.Plain;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JsonReportTest {

    private static JsonObject report(CheckedDesign... designs) {
        return JsonParser.parseString(new String(JsonReport.of(List.of(designs)), StandardCharsets.UTF_8))
                .getAsJsonObject();
    }

    private static JsonObject design(CheckedDesign design) {
        return report(design).getAsJsonArray("designs").get(0).getAsJsonObject();
    }

    private static JsonObject finding(int index) {
        return design(SampleFindings.MIXED).getAsJsonArray("findings").get(index).getAsJsonObject();
    }

    @Test
    void isOneObjectOfFormatOne() {
        JsonObject report = report(SampleFindings.MIXED, SampleFindings.CLEAN, SampleFindings.BROKEN);
        assertEquals(Set.of("format", "designs"), report.keySet());
        assertEquals(1, report.get("format").getAsInt());
        assertEquals(3, report.getAsJsonArray("designs").size());
    }

    @Test
    void tellsADesign() {
        JsonObject design = design(SampleFindings.MIXED);
        assertEquals(Set.of("path", "product", "material", "method", "findings", "millis"), design.keySet());
        assertEquals("jobs/Tour \u00fc/a b.design", design.get("path").getAsString());
        assertEquals("standard-pick", design.get("product").getAsString());
        assertEquals("solid-black", design.get("material").getAsString());
        assertEquals("pad-spot", design.get("method").getAsString());
        assertEquals(12, design.get("millis").getAsLong());
        assertEquals(0, design(SampleFindings.CLEAN).getAsJsonArray("findings").size());
    }

    @Test
    void tellsAnErrorInPlaceOfFindings() {
        JsonObject design = design(SampleFindings.BROKEN);
        assertEquals(Set.of("path", "error", "millis"), design.keySet());
        assertEquals("x:y.design: the file is empty.", design.get("error").getAsString());
    }

    @Test
    void tellsAFindingWithAllItsFields() {
        JsonObject finding = finding(0);
        assertEquals(Set.of("check", "kind", "severity", "side", "region", "measured", "limit", "unit", "where",
                "message", "waived", "fixes"), finding.keySet());
        assertEquals("error", finding.get("severity").getAsString());
        assertEquals("POLYGON ((0 0, 1 0, 1 1.5, 0 0))", finding.get("where").getAsString());
        assertEquals("[\"scale-up\"]", finding.get("fixes").toString());
        assertFalse(finding.get("waived").getAsBoolean());
    }

    @Test
    void leavesOutWhatHasNoMeaning() {
        assertEquals(Set.of("check", "severity", "message", "waived", "fixes"), finding(1).keySet());
        assertEquals(Set.of("check", "severity", "side", "measured", "where", "message", "waived", "fixes"),
                finding(2).keySet());
    }

    @ParameterizedTest
    @CsvSource({"0.000012345, 0", "0.00005001, 0.0001", "-0.00001, 0", "1e-7, 0", "12345678, 12345678",
        "1e15, 1000000000000000", "0.15, 0.15", "-2.5, -2.5", "3.14159265, 3.1416"})
    void writesPlainDecimals(double value, String text) {
        assertEquals(text, Plain.number(value));
    }

    @Test
    void isTheSameEachTimeAndEndsInALineBreak() {
        byte[] one = JsonReport.of(SampleFindings.ALL);
        assertEquals(new String(one, StandardCharsets.UTF_8),
                new String(JsonReport.of(SampleFindings.ALL), StandardCharsets.UTF_8));
        assertEquals('\n', one[one.length - 1]);
    }
}
