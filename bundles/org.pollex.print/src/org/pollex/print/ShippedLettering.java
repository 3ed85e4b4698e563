/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.FillRule;
import org.pollex.artwork.font.FontMatch;
import org.pollex.artwork.font.ShippedFont;
import org.pollex.artwork.font.ShippedFonts;
import org.pollex.model.design.TextLine;

/**
 * Sets lines of text in the shipped fonts, one character after the other with pair kerning and the spacing of the line.
 * A font that is not shipped has the nearest one of its class stand in; a character that the font lacks shows its box.
 * Both are told.
 */
public final class ShippedLettering implements Lettering {

    @Override
    public SetLine set(TextLine line) {
        String text = line.getText() == null ? "" : line.getText();
        FontMatch match = ShippedFonts.standard().match(line.getFont() == null ? "" : line.getFont(), line.isBold(),
                line.isItalic());
        ShippedFont font = match.font();
        Path2D letters = new Path2D.Double(Path2D.WIND_NON_ZERO);
        int[] characters = text.codePoints().toArray();
        double pen = 0;
        for (int i = 0; i < characters.length; i++) {
            AffineTransform place = AffineTransform.getTranslateInstance(pen, 0);
            place.scale(line.getSize(), line.getSize());
            letters.append(font.glyph(characters[i]).getPathIterator(place), false);
            double kerning = i + 1 < characters.length ? font.kerning(characters[i], characters[i + 1]) : 0;
            pen += (font.advance(characters[i]) + kerning) * line.getSize() + line.getSpacing();
        }
        return new SetLine(ArtPath.of(letters, FillRule.NON_ZERO), font.xHeight(line.getSize()),
                missing(match, characters));
    }

    private static String missing(FontMatch match, int[] characters) {
        List<String> told = new ArrayList<>();
        if (match.replaced()) {
            told.add("The font " + match.asked() + " is not shipped; " + match.font().name()
                    + " stands in, choose a shipped font or use outlines.");
        }
        StringBuilder lacking = new StringBuilder();
        for (int character : characters) {
            if (!match.font().covers(character) && lacking.indexOf(Character.toString(character)) < 0) {
                lacking.append(lacking.isEmpty() ? "" : " ").appendCodePoint(character);
            }
        }
        if (!lacking.isEmpty()) {
            told.add(match.font().name() + " has no " + lacking + "; a box stands in, use outlines.");
        }
        return String.join(" ", told);
    }
}
