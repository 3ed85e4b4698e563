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
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.io.WKTReader;
import org.pollex.commandline.Studio;

class CheckWordTest {

    @TempDir
    private Path folder;
    private Studio studio;

    @BeforeEach
    void open() {
        studio = new Studio(folder);
        studio.write("in/square.svg", Studio.square());
        studio.write("in/hairline.svg", Studio.hairline());
        studio.make("job/clean.design", "--front", "in/square.svg", "--largest");
        studio.make("job/deep/thin.design", "--front", "in/hairline.svg", "--largest");
    }

    private JsonArray designs(String... paths) {
        List<String> words = new ArrayList<>(List.of("check", "--json", "r.json"));
        words.addAll(List.of(paths));
        studio.call(words.toArray(new String[0]));
        return JsonParser.parseString(studio.text("r.json")).getAsJsonObject().getAsJsonArray("designs");
    }

    @ParameterizedTest
    @CsvSource({"job/clean.design, error, 0", "job/deep/thin.design, error, 1", "job/deep/thin.design, warning, 1",
        "job/deep/thin.design, never, 0", "job, error, 1", "job, never, 0"})
    void endsAsFailOnSays(String path, String failOn, int code) {
        assertEquals(code, studio.call("check", path, "--fail-on", failOn).code());
    }

    @Test
    void failsOnErrorsUnlessToldOtherwise() {
        assertEquals(1, studio.call("check", "job").code());
    }

    @Test
    void findsDesignsInTheWholeTreeOnce() {
        JsonArray designs = designs("job", "job/clean.design");
        assertEquals(2, designs.size());
        assertEquals("job/clean.design", designs.get(0).getAsJsonObject().get("path").getAsString());
        assertEquals("job/deep/thin.design", designs.get(1).getAsJsonObject().get("path").getAsString());
    }

    @Test
    void passesOverHiddenNames() throws Exception {
        Files.copy(folder.resolve("job/clean.design"), folder.resolve("job/.clean.design"));
        Files.createDirectory(folder.resolve("job/.old"));
        Files.copy(folder.resolve("job/clean.design"), folder.resolve("job/.old/clean.design"));
        assertEquals(2, designs("job").size());
    }

    @Test
    void tellsFindingsWithPlaceAndMeasure() throws Exception {
        JsonObject design = designs("job/deep/thin.design").get(0).getAsJsonObject();
        assertEquals("standard-pick", design.get("product").getAsString());
        assertEquals("solid-white", design.get("material").getAsString());
        assertEquals("pad-one-colour", design.get("method").getAsString());
        JsonObject thin = null;
        for (JsonElement each : design.getAsJsonArray("findings")) {
            if (each.getAsJsonObject().get("check").getAsString().equals("line-too-thin")) {
                thin = each.getAsJsonObject();
            }
        }
        assertTrue(thin != null, design.toString());
        assertEquals("error", thin.get("severity").getAsString());
        assertEquals("front", thin.get("side").getAsString());
        assertEquals("mm", thin.get("unit").getAsString());
        double scale = Double.parseDouble(scale(studio.text("job/deep/thin.design")));
        assertEquals(0.05 * scale, thin.get("measured").getAsDouble(), 0.001 * scale);
        assertEquals(0.15, thin.get("limit").getAsDouble());
        assertFalse(new WKTReader().read(thin.get("where").getAsString()).isEmpty());
    }

    private static String scale(String design) {
        return design.replaceAll("(?s).*scale=\"([^\"]+)\".*", "$1");
    }

    @Test
    void oneBrokenFileNeverStopsTheRest() {
        studio.write("job/aaa.design", "not a design");
        studio.write("job/zzz.design", "");
        Studio.Answer answer = studio.call("check", "job", "--json", "r.json", "--fail-on", "never");
        assertEquals(3, answer.code());
        assertEquals(2, answer.errors().size(), answer.err());
        JsonArray designs = JsonParser.parseString(studio.text("r.json")).getAsJsonObject().getAsJsonArray("designs");
        assertEquals(4, designs.size());
        assertEquals(Set.of("path", "error", "millis"), designs.get(0).getAsJsonObject().keySet());
        assertTrue(designs.get(1).getAsJsonObject().has("findings"));
        assertTrue(answer.out().contains("2 not readable"), answer.out());
    }

    @Test
    void tellsMissingArt() throws Exception {
        Files.delete(folder.resolve("job/art/square.svg"));
        Studio.Answer answer = studio.call("check", "job/clean.design");
        assertEquals(3, answer.code());
        assertEquals(1, answer.errors().size());
        assertTrue(answer.err().contains("art/square.svg"), answer.err());
    }

    @Test
    void tellsAnUnknownProductOfADesign() {
        studio.write("job/clean.design", studio.text("job/clean.design").replace("standard-pick", "gone-pick"));
        Studio.Answer answer = studio.call("check", "job/clean.design");
        assertEquals(3, answer.code());
        assertTrue(answer.err().contains("gone-pick"), answer.err());
    }

    @Test
    void writesEveryReport() {
        Studio.Answer answer = studio.call("check", "job", "--json", "o/r.json", "--sarif", "o/r.sarif", "--junit",
                "o/r.xml");
        assertEquals(1, answer.code());
        assertTrue(studio.files().containsAll(List.of("o/r.json", "o/r.sarif", "o/r.xml")));
        assertTrue(studio.text("o/r.sarif").contains("\"line-too-thin\""));
        assertTrue(studio.text("o/r.xml").contains("<failure"));
        assertTrue(answer.out().contains("2 designs checked: 1 with errors"), answer.out());
        assertEquals("", answer.err());
    }

    @Test
    void writesTheOtherReportsWhenOneCannotBeWritten() {
        Studio.Answer answer = studio.call("check", "job", "--json", "in/square.svg/r.json", "--junit", "r.xml");
        assertEquals(4, answer.code());
        assertEquals(1, answer.errors().size());
        assertTrue(studio.files().contains("r.xml"));
    }

    @Test
    void checksTheDesignsOfAJob() {
        studio.write("job/tour.job", """
                <?xml version="1.0" encoding="UTF-8"?>
                <job:Job xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" xmlns:job="http://pollex.org/model/job"
                    format="1" name="Tour" client="Skerry Light Ferries">
                  <designs path="deep/thin.design"/>
                </job:Job>
                """);
        JsonArray designs = designs("job/tour.job");
        assertEquals(1, designs.size());
        assertEquals("job/deep/thin.design", designs.get(0).getAsJsonObject().get("path").getAsString());
    }

    @Test
    void givesTheSameReportEachTimeButForTheTime() {
        String one = designs("job").toString().replaceAll("\"millis\":\\d+", "");
        assertEquals(one, designs("job").toString().replaceAll("\"millis\":\\d+", ""));
    }

    @Test
    void refusesAFolderWithoutDesigns() throws Exception {
        Files.createDirectory(folder.resolve("empty"));
        Studio.Answer answer = studio.call("check", "empty");
        assertEquals(3, answer.code());
        assertTrue(answer.err().contains("holds no design"), answer.err());
    }
}
