/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pollex.commandline.Studio;

class WearWordTest {

    @TempDir
    private Path folder;
    private Studio studio;

    @BeforeEach
    void open() {
        studio = new Studio(folder);
        studio.write("wedge.svg", Studio.svg(10, 10, "<path d=\"M0 0L5 10L10 0Z\"/>"));
        studio.make("a.design", "--front", "wedge.svg", "--largest");
    }

    private JsonObject json(String... words) {
        String[] all = new String[words.length + 4];
        all[0] = "wear";
        all[1] = "a.design";
        all[2] = "--json";
        all[3] = "w.json";
        System.arraycopy(words, 0, all, 4, words.length);
        Studio.Answer answer = studio.call(all);
        assertEquals(0, answer.code(), answer.err());
        return JsonParser.parseString(new String(studio.bytes("w.json"), StandardCharsets.UTF_8)).getAsJsonObject();
    }

    @Test
    void forecastsMoreWithEveryHourAndSaysThatItIsAModel() {
        double before = -1;
        for (String hours : new String[] {"0", "20", "80", "200"}) {
            JsonObject report = json("--hours", hours);
            double lost = report.get("lost").getAsDouble();
            assertTrue(lost > before || hours.equals("0") && lost == 0, lost + " after " + before);
            before = lost;
            assertTrue(report.get("note").getAsString().contains("model"));
            assertEquals(1, report.getAsJsonArray("regions").size());
        }
        assertTrue(studio.call("wear", "a.design", "--hours", "20").out().contains("This is a model"));
    }

    @Test
    void usesAndAWornSampleChangeIt() {
        double practice = json("--hours", "20").get("lost").getAsDouble();
        assertTrue(json("--hours", "20", "--use", "stage").get("lost").getAsDouble() > practice);
        assertTrue(json("--hours", "20", "--use", "display").get("lost").getAsDouble() < practice);
        double soft = json("--hours", "20", "--half-gone", "6", "--after", "4").get("rate").getAsDouble();
        double hard = json("--hours", "20", "--half-gone", "6", "--after", "40").get("rate").getAsDouble();
        assertEquals(10, soft / hard, 1e-3);
        double tested = json("--hours", "20", "--half-gone", "6", "--after", "40", "--abraded", "42/500,30/1000")
                .get("rate").getAsDouble();
        assertEquals(84.0 / 30, tested / hard, 1e-3);
    }

    /** What one sample showed is kept for its material, for every design that sees the folder. */
    @Test
    void aSampleIsKeptForItsMaterial() {
        JsonObject before = json("--hours", "20");
        assertFalse(before.get("calibrated").getAsBoolean());
        assertTrue(studio.call("wear", "a.design", "--hours", "20").out().contains("not calibrated"));
        Studio.Answer kept = studio.call("wear", "a.design", "--hours", "20", "--half-gone", "4", "--after", "9",
                "--keep");
        assertEquals(0, kept.code(), kept.err());
        assertTrue(kept.out().contains("wear.catalogue"), kept.out());
        assertTrue(kept.out().contains("calibrated from one sample"), kept.out());
        JsonObject now = json("--hours", "20");
        assertTrue(now.get("calibrated").getAsBoolean());
        assertEquals(json("--hours", "20", "--half-gone", "4", "--after", "9").get("rate").getAsDouble(),
                now.get("rate").getAsDouble(), 1e-3);
        // another sample takes its place
        studio.call("wear", "a.design", "--hours", "20", "--half-gone", "4", "--after", "18", "--keep");
        assertEquals(now.get("rate").getAsDouble() / 2, json("--hours", "20").get("rate").getAsDouble(), 1e-3);
        assertEquals(0, studio.call("check", "a.design", "--fail-on", "never").code());
    }

    @Test
    void thePictureLosesInkAndNeverGetsItBack() throws IOException {
        BufferedImage before = null;
        for (String hours : new String[] {"0", "20", "80", "200"}) {
            assertEquals(0, studio.call("wear", "a.design", "--hours", hours, "--png", "w.png").code());
            BufferedImage now = ImageIO.read(new ByteArrayInputStream(studio.bytes("w.png")));
            if (before == null) {
                assertEquals(0, studio.call("picture", "a.design", "--png", "p.png").code());
                BufferedImage fresh = ImageIO.read(new ByteArrayInputStream(studio.bytes("p.png")));
                assertEquals(fresh.getRGB(fresh.getWidth() / 4, fresh.getHeight() / 2),
                        now.getRGB(now.getWidth() / 4, now.getHeight() / 2));
            } else {
                assertTrue(inked(now) < inked(before), hours + " h");
                assertNotEquals(0, inked(now));
            }
            before = now;
        }
    }

    private static int inked(BufferedImage image) {
        int count = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth() / 2; x++) {
                count += (image.getRGB(x, y) >> 8 & 255) < 60 ? 1 : 0;
            }
        }
        return count;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"--hours -1", "--hours many", "--hours 5 --use sports",
        "--hours 5 --half-gone here --after 3", "--hours 5 --abraded 42/500", "--hours 5 --abraded 42/0,30/500",
        "--hours 5 --abraded a,b", "--hours 5 --half-gone 4", "--hours 5 --after 4", "--hours 5 --keep",
        "--hours 5 --half-gone 4 --after 0", "--hours 5 --half-gone 40 --after 9", "--png x.png"})
    void refusesWrongUse(String words) {
        String[] parts = ("wear a.design " + words).split(" ");
        Studio.Answer answer = studio.call(parts);
        assertEquals(2, answer.code(), answer.err());
        assertEquals(1, answer.err().strip().lines().count(), answer.err());
    }
}
