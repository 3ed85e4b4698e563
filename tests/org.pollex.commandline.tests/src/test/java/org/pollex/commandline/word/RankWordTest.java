/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.commandline.Studio;

class RankWordTest {

    @TempDir
    private Path folder;
    private Studio studio;

    @BeforeEach
    void open() {
        studio = new Studio(folder);
        studio.write("wedge.svg", Studio.svg(10, 10, "<path d=\"M0 10L5 0L10 10Z\"/>"));
        studio.make("a.design", "--front", "wedge.svg");
    }

    @Test
    void ranksEveryInkOverEveryMaterialBestFirst() {
        Studio.Answer answer = studio.call("rank", "a.design", "--json", "rank.json");
        assertEquals(0, answer.code(), answer.err());
        JsonObject report = JsonParser.parseString(new String(studio.bytes("rank.json"), StandardCharsets.UTF_8))
                .getAsJsonObject();
        JsonArray ranking = report.getAsJsonArray("ranking");
        int materials = materials();
        assertEquals(materials * inks(), ranking.size());
        double before = 100;
        int own = 0;
        Set<String> pairs = new HashSet<>();
        for (int i = 0; i < ranking.size(); i++) {
            JsonObject each = ranking.get(i).getAsJsonObject();
            double score = each.get("score").getAsDouble();
            assertTrue(score <= before && score >= 0, "score " + score);
            before = score;
            own += each.get("own").getAsBoolean() ? 1 : 0;
            assertTrue(pairs.add(each.get("inks") + " " + each.get("material")));
            assertTrue(each.get("reason").getAsString().endsWith("."), each.toString());
        }
        assertEquals(1, own);
    }

    private int materials() {
        return JsonParser.parseString(studio.call("list", "materials", "--json").out()).getAsJsonArray().size();
    }

    private int inks() {
        return JsonParser.parseString(studio.call("list", "inks", "--json").out()).getAsJsonArray().size();
    }

    @Test
    void showsTheBestAndTheOneAsItIs() {
        Studio.Answer answer = studio.call("rank", "a.design", "--most", "3");
        assertEquals(0, answer.code(), answer.err());
        assertTrue(answer.out().contains("1.") && answer.out().contains("reads well"), answer.out());
        assertTrue(answer.out().contains("(as it is)"), answer.out());
        assertTrue(answer.out().lines().count() <= 5, answer.out());
    }

    @Test
    void refusesWhatItCannotDo() {
        assertEquals(2, studio.call("rank", "a.design", "--most", "0").code());
        assertEquals(3, studio.call("rank", "none.design").code());
        assertEquals(4, studio.call("rank", "a.design", "--json", "a.design/x.json").code());
    }
}
