/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.font;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.KerningSubtable;
import org.apache.fontbox.ttf.KerningTable;
import org.apache.fontbox.ttf.OS2WindowsMetricsTable;
import org.apache.fontbox.ttf.PostScriptTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** A parsed TrueType file. The parser reads tables and glyphs on demand and is no friend of threads: one at a time. */
final class FontFile {

    private final TrueTypeFont font;
    private final CmapLookup characters;
    private final KerningSubtable kerning;
    private final double unit;
    private final double ascent;
    private final double descent;
    private final double[] underline;
    private final double[] strikeout;
    private final Map<Integer, Path2D.Double> outlines = new ConcurrentHashMap<>();
    private final Map<Integer, Double> advances = new ConcurrentHashMap<>();
    private final Map<Integer, Integer> glyphs = new ConcurrentHashMap<>();

    FontFile(byte[] bytes) {
        try {
            font = new TTFParser(true).parse(new RandomAccessReadBuffer(bytes));
            characters = font.getUnicodeCmapLookup();
            unit = 1.0 / font.getUnitsPerEm();
            KerningTable pairs = font.getKerning();
            kerning = pairs == null ? null : pairs.getHorizontalKerningSubtable();
            ascent = font.getHorizontalHeader().getAscender() * unit;
            descent = -font.getHorizontalHeader().getDescender() * unit;
            PostScriptTable post = font.getPostScript();
            double thick = post.getUnderlineThickness() * unit;
            underline = new double[] {-post.getUnderlinePosition() * unit + thick / 2, thick};
            OS2WindowsMetricsTable os2 = font.getOS2Windows();
            double bar = os2.getStrikeoutSize() * unit;
            strikeout = new double[] {os2.getStrikeoutPosition() * unit - bar / 2, bar};
        } catch (IOException e) {
            throw new UncheckedIOException("A font of the installation is damaged.", e);
        }
    }

    int glyph(int codePoint) {
        return glyphs.computeIfAbsent(codePoint, c -> {
            synchronized (font) {
                return characters.getGlyphId(c);
            }
        });
    }

    double advance(int glyph) {
        return advances.computeIfAbsent(glyph, g -> {
            synchronized (font) {
                try {
                    return font.getAdvanceWidth(g) * unit;
                } catch (IOException e) {
                    throw new UncheckedIOException("A font of the installation is damaged.", e);
                }
            }
        });
    }

    double kerning(int glyph, int next) {
        if (kerning == null) {
            return 0;
        }
        synchronized (font) {
            return kerning.getKerning(glyph, next) * unit;
        }
    }

    Path2D.Double outline(int glyph) {
        return outlines.computeIfAbsent(glyph, this::load);
    }

    private Path2D.Double load(int glyph) {
        Path2D.Double path = new Path2D.Double(Path2D.WIND_NON_ZERO);
        synchronized (font) {
            try {
                GlyphData data = font.getGlyph().getGlyph(glyph);
                if (data != null) {
                    path.append(data.getPath().getPathIterator(new AffineTransform(unit, 0, 0, -unit, 0, 0)), false);
                }
            } catch (IOException e) {
                throw new UncheckedIOException("A font of the installation is damaged.", e);
            }
        }
        return path;
    }

    double xHeight() {
        return -outline(glyph('x')).getBounds2D().getMinY();
    }

    double capHeight() {
        return -outline(glyph('H')).getBounds2D().getMinY();
    }

    double ascent() {
        return ascent;
    }

    double descent() {
        return descent;
    }

    double[] underline() {
        return underline.clone();
    }

    double[] strikeout() {
        return strikeout.clone();
    }
}
