/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.commandline.Studio;
import org.pollex.model.job.Job;
import org.pollex.model.store.ModelFiles;

class SampleJobTest {

    @TempDir
    private Path folder;
    private Studio studio;
    private Studio.Answer answer;

    @BeforeEach
    void write() {
        studio = new Studio(folder);
        answer = studio.call("demo", "sample");
    }

    private JsonObject design(String name) {
        JsonArray designs = JsonParser.parseString(studio.text("sample/out/findings.json")).getAsJsonObject()
                .getAsJsonArray("designs");
        for (JsonElement each : designs) {
            if (each.getAsJsonObject().get("path").getAsString().endsWith(name + ".design")) {
                return each.getAsJsonObject();
            }
        }
        throw new AssertionError(name);
    }

    private Set<String> checks(String name, String severity) {
        Set<String> found = new TreeSet<>();
        design(name).getAsJsonArray("findings").forEach(each -> {
            if (each.getAsJsonObject().get("severity").getAsString().equals(severity)) {
                found.add(each.getAsJsonObject().get("check").getAsString());
            }
        });
        return found;
    }

    @Test
    void writesTheWholeJobAndEndsWithoutError() throws Exception {
        assertEquals(0, answer.code(), answer.err());
        assertEquals("", answer.err());
        assertEquals(List.of("art/badge.svg", "art/ferry.svg", "art/lighthouse.svg", "deck-hands.design",
                "evening-crossing.design", "out/deck-hands-proof.pdf", "out/deck-hands-zones.png",
                "out/deck-hands.png", "out/evening-crossing-proof.pdf", "out/evening-crossing-zones.png",
                "out/evening-crossing.png", "out/findings.json", "out/findings.sarif", "out/findings.xml",
                "out/skerry-light-proof.pdf", "out/skerry-light-zones.png", "out/skerry-light.png",
                "revisions/1/deck-hands.design", "revisions/1/evening-crossing.design",
                "revisions/1/skerry-light.design", "skerry-light.design", "summer-season.job"),
                studio.files().stream().map(name -> name.replace("sample/", "")).filter(name -> !name.startsWith("."))
                        .toList());
        Job job = ModelFiles.JOBS.load(folder.resolve("sample/summer-season.job"));
        assertEquals("Skerry Light Ferries", job.getClient());
        assertEquals(3, job.getDesigns().size());
        assertEquals(3, job.getRevisions().get(0).getSnapshots().size());
    }

    @Test
    void oneDesignIsClean() {
        assertEquals(Set.of(), checks("skerry-light", "error"));
        assertEquals(Set.of(), checks("skerry-light", "warning"));
    }

    @Test
    void oneHasThinLinesAndATipInTheWearZone() {
        assertTrue(checks("evening-crossing", "error").contains("line-too-thin"), answer.out());
        Set<String> all = checks("evening-crossing", "info");
        all.addAll(checks("evening-crossing", "warning"));
        assertTrue(all.contains("art-in-wear"), answer.out());
    }

    @Test
    void oneIsPrintedInSeveralColoursOnBothSides() {
        String design = studio.text("sample/deck-hands.design");
        assertTrue(design.contains("name=\"back\""));
        int inks = design.split("<inks>", -1).length - 1;
        assertTrue(inks >= 3 && inks <= 4, design);
    }

    @Test
    void tellsTheStepsAndTheyWork() {
        List<String> steps = answer.out().lines().filter(line -> line.startsWith("  releng/studio ")).toList();
        assertEquals(5, steps.size(), answer.out());
        for (String step : steps) {
            Studio.Answer repeated = studio.call(step.replace("  releng/studio ", "").split(" "));
            int wanted = step.contains(" check ") ? 1 : 0;
            assertEquals(wanted, repeated.code(), step + ": " + repeated.err());
        }
    }

    @Test
    void writesTheSameAgain() {
        String before = studio.text("sample/deck-hands.design");
        assertEquals(0, studio.call("demo", "sample").code());
        assertEquals(before, studio.text("sample/deck-hands.design"));
    }

    /** The job is written beside the caller when no folder is named. */
    @Test
    void needsNoName() {
        Studio.Answer unnamed = studio.call("demo");
        assertEquals(0, unnamed.code(), unnamed.err());
        assertEquals(studio.text("sample/deck-hands.design"), studio.text("summer-season/deck-hands.design"));
        assertTrue(unnamed.out().contains("summer-season"), unnamed.out());
    }

    @Test
    void leavesOtherPeoplesFoldersAlone() {
        studio.write("other/letter.txt", "dear client");
        Studio.Answer refused = studio.call("demo", "other");
        assertEquals(4, refused.code());
        assertEquals(1, refused.errors().size());
        assertFalse(studio.files().stream().anyMatch(name -> name.startsWith("other/art")));
    }
}
