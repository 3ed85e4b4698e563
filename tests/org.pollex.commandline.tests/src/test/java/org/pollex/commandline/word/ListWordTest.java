/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.WKTReader;
import org.pollex.commandline.Studio;

class ListWordTest {

    @TempDir
    private Path folder;

    private JsonArray list(String kind) {
        Studio.Answer answer = new Studio(folder).call("list", kind, "--json");
        assertEquals(0, answer.code(), answer.err());
        assertEquals("", answer.err());
        return JsonParser.parseString(answer.out()).getAsJsonArray();
    }

    private JsonObject entry(String kind, String id) {
        for (JsonElement each : list(kind)) {
            if (each.getAsJsonObject().get("id").getAsString().equals(id)) {
                return each.getAsJsonObject();
            }
        }
        throw new AssertionError("no " + id);
    }

    @ParameterizedTest
    @ValueSource(strings = {"families", "products", "materials", "inks", "methods", "checks"})
    void listsEveryKindForPeopleAndPrograms(String kind) {
        JsonArray all = list(kind);
        Studio.Answer answer = new Studio(folder).call("list", kind);
        assertEquals(0, answer.code());
        assertEquals(all.size(), answer.out().lines().count());
        Set<String> ids = new HashSet<>();
        for (JsonElement each : all) {
            String id = each.getAsJsonObject().get("id").getAsString();
            assertTrue(ids.add(id), id);
            assertFalse(each.getAsJsonObject().get("name").getAsString().isBlank(), id);
            assertTrue(answer.out().lines().anyMatch(line -> line.startsWith(id + " ")), id);
        }
        assertFalse(ids.isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"standard-pick, 26, 31", "small-pick, 22, 26", "wide-triangle-pick, 30, 30"})
    void tellsProductsWithTheirZones(String id, double width, double height) throws Exception {
        JsonObject product = entry("products", id);
        assertEquals(width, product.get("width").getAsDouble());
        assertEquals(height, product.get("height").getAsDouble());
        JsonArray sides = product.getAsJsonArray("sides");
        assertEquals("front", sides.get(0).getAsJsonObject().get("name").getAsString());
        for (JsonElement each : sides) {
            JsonObject side = each.getAsJsonObject();
            Geometry outline = wkt(side, "outline");
            double sum = wkt(side, "safe").getArea() + wkt(side, "wearRisk").getArea()
                    + wkt(side, "unprintable").getArea();
            assertEquals(outline.getArea(), sum, outline.getArea() * 1e-4);
            assertEquals(width, outline.getEnvelopeInternal().getWidth(), 0.005);
            assertEquals(height, outline.getEnvelopeInternal().getHeight(), 0.005);
            assertEquals(0, outline.getEnvelopeInternal().centre().x, 0.003);
            assertEquals(0, outline.getEnvelopeInternal().centre().y, 0.003);
        }
    }

    private static Geometry wkt(JsonObject side, String field) throws Exception {
        Geometry geometry = new WKTReader().read(side.get(field).getAsString());
        assertTrue(geometry.getArea() > 0, field);
        return geometry;
    }

    @Test
    void tellsTheLimitsOfMethods() {
        for (JsonElement each : list("methods")) {
            JsonObject method = each.getAsJsonObject();
            for (String field : List.of("lineMin", "gapMin", "lineMinReversed", "gapMinReversed", "typeMin", "edge",
                    "register", "choke", "inksMax", "resolution")) {
                assertTrue(method.get(field).getAsJsonPrimitive().isNumber(), field);
            }
        }
        assertEquals(1, entry("methods", "pad-one-colour").get("inksMax").getAsInt());
        assertTrue(entry("methods", "full-colour-white").get("fullColour").getAsBoolean());
    }

    @Test
    void tellsColours() {
        JsonObject white = entry("inks", "white");
        assertEquals(3, white.getAsJsonArray("lab").size());
        assertEquals(3, white.getAsJsonArray("labOverBlack").size());
        assertTrue(white.get("film").getAsDouble() > 0);
        assertEquals("white", white.get("kind").getAsString());
        assertTrue(entry("materials", "solid-black").getAsJsonArray("lab").get(0).getAsDouble() < 30);
    }

    @Test
    void tellsEveryCheckOfTheContract() {
        Set<String> ids = new HashSet<>();
        list("checks").forEach(each -> ids.add(each.getAsJsonObject().get("id").getAsString()));
        assertTrue(ids.containsAll(Set.of("line-too-thin", "gap-too-narrow", "speck", "pinhole", "type-too-small",
                "art-off-edge", "art-in-wear", "too-many-inks", "ink-unmatched", "weak-contrast", "fit-poor",
                "crowded-side", "raster-coarse", "art-unsupported")), ids.toString());
    }

    @Test
    void honoursTheStudiosOwnCatalogue() {
        new Studio(folder).write("own.catalogue", """
                <?xml version="1.0" encoding="UTF-8"?>
                <catalogue:Catalogue xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI"
                    xmlns:catalogue="http://pollex.org/model/catalogue" format="1" name="Ours">
                  <inks id="harbour-teal" name="harbour teal" lab="50 -30 -10" labOverBlack="30 -18 -6" film="8.0"/>
                </catalogue:Catalogue>
                """);
        assertEquals("harbour teal", entry("inks", "harbour-teal").get("name").getAsString());
        assertEquals("white", entry("inks", "white").get("name").getAsString());
    }

    @Test
    void refusesAnUnknownKind() {
        Studio.Answer answer = new Studio(folder).call("list", "plectra");
        assertEquals(2, answer.code());
        assertEquals(1, answer.errors().size());
        assertEquals(2, new Studio(folder).call("list").code());
    }
}
