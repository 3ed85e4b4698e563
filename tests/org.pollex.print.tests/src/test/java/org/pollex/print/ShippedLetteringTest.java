/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.pollex.artwork.font.ShippedFonts;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.TextLine;

class ShippedLetteringTest {

    private static TextLine line(String text, String font, double spacing) {
        TextLine line = DesignFactory.eINSTANCE.createTextLine();
        line.setText(text);
        line.setFont(font);
        line.setSize(4);
        line.setSpacing(spacing);
        return line;
    }

    private static Lettering.SetLine set(String text, String font, double spacing) {
        return new ShippedLettering().set(line(text, font, spacing));
    }

    @Test
    void setsALineAsTheFontItself() {
        double wide = set("AVAST", "Liberation Sans", 0).outline().bounds().getWidth();
        assertEquals(ShippedFonts.standard().match("Liberation Sans", false, false).font().outline("AVAST", 4).bounds()
                .getWidth(), wide, 1e-6);
        assertEquals("", set("AVAST", "Liberation Sans", 0).missing());
    }

    @Test
    void spacesLetters() {
        double plain = set("HHH", "Liberation Sans", 0).outline().bounds().getWidth();
        assertEquals(plain + 2 * 0.7, set("HHH", "Liberation Sans", 0.7).outline().bounds().getWidth(), 1e-6);
    }

    @Test
    void measuresTheXHeight() {
        Lettering.SetLine set = set("x", "Liberation Sans", 0);
        assertEquals(set.outline().bounds().getHeight(), set.xHeight(), 0.02);
    }

    @Test
    void tellsWhatStandsIn() {
        assertTrue(set("Ahoy", "Harbour Grotesque", 0).missing().contains("Harbour Grotesque is not shipped"));
        assertTrue(set("A\u6f22", "Liberation Sans", 0).missing().contains("\u6f22"));
    }
}
