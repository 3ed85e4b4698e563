/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.page;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * A font of one document; only the glyphs that are used are embedded. A character that the font lacks is shown as a
 * question mark, a control character as a blank. No kerning, no shaping: scripts that need them come out letter by
 * letter.
 */
public final class PageFont {

    private final PDType0Font font;
    private final Map<Integer, String> drawable = new HashMap<>();

    PageFont(PDDocument document, byte[] trueType) {
        try {
            font = PDType0Font.load(document, new ByteArrayInputStream(trueType), true);
        } catch (IOException e) {
            throw new UncheckedIOException("A shipped font cannot be read.", e);
        }
    }

    PDType0Font font() {
        return font;
    }

    /** The text with everything replaced that the font cannot show. */
    public String drawable(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(character -> out.append(drawable.computeIfAbsent(character, this::replacement)));
        return out.toString();
    }

    private String replacement(int character) {
        if (Character.isISOControl(character)) {
            return " ";
        }
        String text = Character.toString(character);
        try {
            font.encode(text);
            return text;
        } catch (IllegalArgumentException e) {
            return "?";
        } catch (IOException e) {
            throw new UncheckedIOException("A shipped font cannot be read.", e);
        }
    }

    /** Width of a line in mm at a size in points. */
    public double width(String text, double points) {
        try {
            return font.getStringWidth(drawable(text)) / 1000 * points * Sheet.POINT;
        } catch (IOException e) {
            throw new UncheckedIOException("A shipped font cannot be read.", e);
        }
    }

    /** The line as the glyph codes of the document; marks its glyphs as used. */
    byte[] encode(String text) {
        String shown = drawable(text);
        ByteArrayOutputStream codes = new ByteArrayOutputStream();
        shown.codePoints().forEach(character -> {
            font.addToSubset(character);
            try {
                codes.writeBytes(font.encode(Character.toString(character)));
            } catch (IOException e) {
                throw new UncheckedIOException("A shipped font cannot be read.", e);
            }
        });
        return codes.toByteArray();
    }

    void finish() {
        try {
            font.subset();
        } catch (IOException e) {
            throw new UncheckedIOException("A shipped font cannot be embedded.", e);
        }
    }
}
