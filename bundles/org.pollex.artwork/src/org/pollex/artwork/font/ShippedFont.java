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
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.FillRule;

/**
 * One cut of a shipped family: outlines and measures of its glyphs. Lengths that take no size are in em (1 = the font
 * size); those that take a size are in the unit of the size. x right, y down, the baseline at y = 0, the pen starts at
 * x = 0. Outlines are exact: glyph points are whole numbers of font units. Text is set one character after another with
 * the pair kerning of the font; ligatures, marks that stack and right-to-left scripts are not shaped.
 */
public final class ShippedFont {

    private final GenericFamily generic;
    private final String family;
    private final boolean bold;
    private final boolean italic;
    private volatile FontFile file;

    ShippedFont(GenericFamily generic, String family, boolean bold, boolean italic) {
        this.generic = generic;
        this.family = family;
        this.bold = bold;
        this.italic = italic;
    }

    /** Class the family stands for. */
    public GenericFamily generic() {
        return generic;
    }

    /** Family name, such as {@code Liberation Sans}. */
    public String family() {
        return family;
    }

    /** Whether this is a bold cut. */
    public boolean bold() {
        return bold;
    }

    /** Whether this is an italic cut. */
    public boolean italic() {
        return italic;
    }

    /** Family and cut, such as {@code Liberation Sans Bold Italic}; the regular cut has the plain family name. */
    public String name() {
        return family + (bold ? " Bold" : "") + (italic ? " Italic" : "");
    }

    private String resource() {
        String cut = bold ? (italic ? "BoldItalic" : "Bold") : (italic ? "Italic" : "Regular");
        return "/fonts/" + family.replace(" ", "") + "-" + cut + ".ttf";
    }

    private FontFile file() {
        FontFile loaded = file;
        if (loaded == null) {
            synchronized (this) {
                loaded = file;
                if (loaded == null) {
                    loaded = new FontFile(bytes());
                    file = loaded;
                }
            }
        }
        return loaded;
    }

    /** The whole TrueType file, a fresh array, for embedding. */
    public byte[] bytes() {
        try (InputStream in = ShippedFont.class.getResourceAsStream(resource())) {
            if (in == null) {
                throw new IllegalStateException("The font " + resource() + " is missing from the installation.");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("The font " + resource() + " cannot be read.", e);
        }
    }

    /** Whether the font has an outline or a blank for the character. */
    public boolean covers(int codePoint) {
        return file().glyph(codePoint) != 0;
    }

    /** Outline of one character, em; the box for missing characters when it is not covered. Not to be changed. */
    public Path2D.Double glyph(int codePoint) {
        return file().outline(file().glyph(codePoint));
    }

    /** How far the pen moves after a character, em. */
    public double advance(int codePoint) {
        return file().advance(file().glyph(codePoint));
    }

    /** What is added to the advance of a character when another one follows, em; often negative, mostly 0. */
    public double kerning(int codePoint, int next) {
        return file().kerning(file().glyph(codePoint), file().glyph(next));
    }

    /** Length of a line of text from pen start to pen end. */
    public double advance(String text, double size) {
        double sum = 0;
        int[] points = text.codePoints().toArray();
        for (int i = 0; i < points.length; i++) {
            sum += advance(points[i]);
            if (i + 1 < points.length) {
                sum += kerning(points[i], points[i + 1]);
            }
        }
        return sum * size;
    }

    /** Outline of a line of text; {@link #outlines} without the seams. */
    public ArtPath outline(String text, double size) {
        Path2D.Double all = new Path2D.Double(Path2D.WIND_NON_ZERO);
        for (ArtPath glyph : outlines(text, size)) {
            all.append(glyph.iterator(null), false);
        }
        return ArtPath.of(all, FillRule.NON_ZERO);
    }

    /** Outlines of the characters of a line of text, each in its place; characters without ink are left out. */
    public List<ArtPath> outlines(String text, double size) {
        List<ArtPath> glyphs = new ArrayList<>();
        double pen = 0;
        int[] points = text.codePoints().toArray();
        for (int i = 0; i < points.length; i++) {
            AffineTransform place = new AffineTransform(size, 0, 0, size, pen * size, 0);
            ArtPath glyph = ArtPath.of(glyph(points[i]), FillRule.NON_ZERO).transformed(place);
            if (!glyph.iterator(null).isDone()) {
                glyphs.add(glyph);
            }
            pen += advance(points[i]);
            if (i + 1 < points.length) {
                pen += kerning(points[i], points[i + 1]);
            }
        }
        return glyphs;
    }

    /** Height of the lower-case x, measured on its outline. */
    public double xHeight(double size) {
        return file().xHeight() * size;
    }

    /** Height of the capital H, measured on its outline. */
    public double capHeight(double size) {
        return file().capHeight() * size;
    }

    /** How far the font says it rises above the baseline, above 0. */
    public double ascent(double size) {
        return file().ascent() * size;
    }

    /** How far the font says it falls below the baseline, above 0. */
    public double descent(double size) {
        return file().descent() * size;
    }

    /** Where an underline lies and how thick it is: distance of its middle below the baseline, and thickness, em. */
    public double[] underline() {
        return file().underline();
    }

    /** Where a line through the text lies: distance of its middle above the baseline, and thickness, em. */
    public double[] strikeout() {
        return file().strikeout();
    }

    @Override
    public String toString() {
        return name();
    }
}
