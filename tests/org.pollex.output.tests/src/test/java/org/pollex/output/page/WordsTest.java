/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.pollex.output.drawing.HouseFont;

class WordsTest {

    private final Sheet sheet = new Sheet(PageSize.A4);
    private final PageFont font = sheet.font(HouseFont.REGULAR);

    @AfterEach
    void close() {
        sheet.close();
    }

    @Test
    void breaksBetweenWordsAndKeepsAllOfThem() {
        String text = "A line of white is 0.12 mm wide, thinner than the 0.15 mm that the method holds.";
        List<String> lines = Words.lines(font, 8, text, 40, 10);
        assertTrue(lines.size() > 1);
        assertEquals(text, String.join(" ", lines));
        for (String line : lines) {
            assertTrue(font.width(line, 8) <= 40, line);
        }
    }

    @Test
    void breaksWithinAWordThatIsLongerThanALine() {
        String word = "Donaudampfschifffahrtselektrizit\u00e4tenhauptbetriebswerkbauunterbeamtengesellschaft";
        List<String> lines = Words.lines(font, 8, word, 20, 10);
        assertEquals(word, String.join("", lines));
        assertTrue(lines.stream().allMatch(line -> font.width(line, 8) <= 20));
    }

    @Test
    void endsInAnEllipsisWhereLinesRunOut() {
        List<String> lines = Words.lines(font, 8, "one two three four five six seven eight nine ten", 20, 2);
        assertEquals(2, lines.size());
        assertTrue(lines.get(1).endsWith("\u2026"), lines.get(1));
        assertTrue(font.width(lines.get(1), 8) <= 20);
    }

    @Test
    void replacesWhatTheFontCannotShow() {
        assertEquals("a? b", font.drawable("a\u6f22\tb"));
        String letters = "\u0396\u03ae\u03c4\u03b1 \u043a\u0438\u0440";
        assertEquals(letters, font.drawable(letters));
    }
}
