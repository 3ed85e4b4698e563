/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Words on a picture as shapes of a shipped font, so that a picture looks the same on every computer. One line, left to
 * right, without kerning; a character that the font lacks shows its empty box. Not for several threads at once.
 */
public final class Lettering {

    private final TrueTypeFont font;
    private final CmapLookup characters;
    private final double unitsPerEm;

    /** Reads the font. */
    public Lettering(HouseFont house) {
        try {
            font = new TTFParser().parse(new RandomAccessReadBuffer(house.bytes()));
            characters = font.getUnicodeCmapLookup();
            unitsPerEm = font.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException("A shipped font cannot be read.", e);
        }
    }

    /** Width of the line, in the unit of the size. */
    public double width(String text, double size) {
        return text.codePoints().mapToDouble(this::advance).sum() * size / unitsPerEm;
    }

    /** The line with the left end of its base line at a place; y down. */
    public Path2D line(String text, double size, double x, double y) {
        Path2D line = new Path2D.Double(Path2D.WIND_NON_ZERO);
        double scale = size / unitsPerEm;
        double[] at = {x};
        text.codePoints().forEach(character -> {
            AffineTransform place = new AffineTransform(scale, 0, 0, -scale, at[0], y);
            line.append(glyph(character).getPathIterator(place), false);
            at[0] += advance(character) * scale;
        });
        return line;
    }

    private Path2D glyph(int character) {
        try {
            GlyphData data = font.getGlyph().getGlyph(characters.getGlyphId(character));
            return data == null ? new Path2D.Double() : data.getPath();
        } catch (IOException e) {
            throw new UncheckedIOException("A glyph of a shipped font cannot be read.", e);
        }
    }

    private double advance(int character) {
        try {
            return font.getAdvanceWidth(characters.getGlyphId(character));
        } catch (IOException e) {
            throw new UncheckedIOException("A width of a shipped font cannot be read.", e);
        }
    }
}
