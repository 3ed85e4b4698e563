/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pollex.commandline.Studio;
import org.pollex.model.design.Mark;
import org.pollex.model.store.ModelFiles;

class PlaceWordTest {

    @TempDir
    private Path folder;
    private Studio studio;

    @BeforeEach
    void open() {
        studio = new Studio(folder);
        studio.write("wedge.svg", Studio.svg(10, 10, "<path d=\"M0 10L5 0L10 10Z\"/>"));
        studio.make("a.design", "--front", "wedge.svg");
    }

    private Mark mark(String name) throws Exception {
        return ModelFiles.DESIGNS.load(folder.resolve(name)).getSides().get(0).getLayers().get(0).getMarks().get(0);
    }

    @Test
    void placesLargestAndKeepsTheLastState() throws Exception {
        byte[] before = studio.bytes("a.design");
        Studio.Answer answer = studio.call("place", "a.design");
        assertEquals(0, answer.code(), answer.err());
        assertTrue(mark("a.design").getScale() > 1, "scale " + mark("a.design").getScale());
        assertArrayEquals(before, studio.bytes(".a.design.last"));
        assertEquals(0, studio.call("check", "a.design").code());
    }

    @Test
    void tellsScaleShareContactsAndWhatElseWouldGain() {
        String out = studio.call("place", "a.design").out();
        for (String part : List.of("a.design, front: scale ", "share of the safe zone: its hull takes ", "touches ",
                "a half turn: ", "another product at this turn: small pick ", "Wrote a.design.")) {
            assertTrue(out.contains(part), part + " in: " + out);
        }
        // A wedge that widens downwards loses size on a pick that narrows downwards.
        assertTrue(out.matches("(?s).*a half turn: [\\d.]+ % larger.*"), out);
        assertTrue(out.matches("(?s).*small pick [\\d.]+ % smaller.*"), out);
    }

    @Test
    void turnsAHalfTurnAsAskedAndBestIsNoWorse() throws Exception {
        studio.call("place", "a.design", "--out", "up.design");
        studio.call("place", "a.design", "--turn", "180", "--out", "down.design");
        studio.call("place", "a.design", "--turn", "best", "--out", "best.design");
        assertEquals(0, mark("up.design").getTurn());
        assertEquals(180, mark("down.design").getTurn());
        assertTrue(mark("down.design").getScale() > mark("up.design").getScale());
        assertTrue(mark("best.design").getScale() >= mark("down.design").getScale() - 1e-6);
        assertEquals(1, mark("a.design").getScale());
    }

    @Test
    void isAtRestWhenRepeated() throws Exception {
        studio.call("place", "a.design");
        double scale = mark("a.design").getScale();
        studio.call("place", "a.design");
        assertEquals(scale, mark("a.design").getScale(), scale * 1e-5);
    }

    @Test
    void bringsTheArtAlongToAnotherFolder() {
        assertEquals(0, studio.call("place", "a.design", "--out", "other/b.design").code());
        assertTrue(studio.files().contains("other/art/wedge.svg"), studio.files().toString());
        assertEquals(0, studio.call("check", "other/b.design").code());
    }

    @ParameterizedTest
    @CsvSource({"--turn, sideways, 2", "--turn, 999, 2", "--side, back, 2", "--side, lid, 2", "--out, b.txt, 2"})
    void refusesWhatMakesNoSense(String option, String value, int code) {
        byte[] before = studio.bytes("a.design");
        Studio.Answer answer = studio.call("place", "a.design", option, value);
        assertEquals(code, answer.code());
        assertEquals(1, answer.errors().size());
        assertArrayEquals(before, studio.bytes("a.design"));
    }
}
