/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.text;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.font.ShippedFont;
import org.pollex.artwork.svg.reader.style.Property;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.syntax.Length;
import org.pollex.artwork.svg.reader.tree.Node;

/** Places the letters of one text element (SVG 2, section 11.5, for text that runs from left to right). */
public final class TextLayout {

    private final TextContext context;
    private final List<Letter> letters;

    /** Lays an element out. */
    public TextLayout(Node text, Style style, TextContext context) throws ArtException {
        this.context = context;
        TextCollector collector = new TextCollector(context);
        collector.collect(text, style);
        this.letters = collector.letters();
        for (TextCollector.LengthRange range : collector.ranges()) {
            stretch(range);
        }
        place();
    }

    /** Advance of a letter to the next one on the same line. */
    private double advance(int i) {
        Letter l = letters.get(i);
        double size = l.style.fontSize();
        ShippedFont font = l.font.font();
        double a = (font.covers(l.codePoint) ? font.advance(l.codePoint) : 0.5) * size;
        if (i + 1 < letters.size()) {
            Letter next = letters.get(i + 1);
            if (next.font.font() == font && !next.startsChunk() && next.style.fontSize() == size) {
                a += font.kerning(l.codePoint, next.codePoint) * size;
            }
        }
        a *= l.stretch;
        a += spacing(l.style, Property.LETTER_SPACING);
        if (l.isSpace()) {
            a += spacing(l.style, Property.WORD_SPACING);
        }
        return a + l.extra;
    }

    private double spacing(Style style, Property property) {
        Length length = style.length(property);
        return length == Length.ZERO ? 0 : length.resolve(style.fontSize(), style.fontSize());
    }

    private void stretch(TextCollector.LengthRange range) {
        double natural = 0;
        for (int i = range.from(); i < range.to(); i++) {
            if (i > range.from() && letters.get(i).startsChunk()) {
                context.notices().unsupported("textLength", range.node().label(),
                        "a length for text in several pieces is passed over; convert the text to paths");
                return;
            }
            natural += advance(i) + (i > range.from() && !Double.isNaN(letters.get(i).dx) ? letters.get(i).dx : 0);
        }
        int n = range.to() - range.from();
        for (int i = range.from(); i < range.to(); i++) {
            if (range.glyphs() && natural > 0) {
                letters.get(i).stretch *= range.length() / natural;
            } else if (n > 1 && i < range.to() - 1) {
                letters.get(i).extra += (range.length() - natural) / (n - 1);
            }
        }
    }

    private void place() throws ArtException {
        double x = 0;
        double y = 0;
        int chunk = 0;
        for (int i = 0; i < letters.size(); i++) {
            Letter l = letters.get(i);
            boolean newRail = l.rail.isPresent() && (i == 0 || !letters.get(i - 1).rail.equals(l.rail));
            if (i > 0 && (l.startsChunk() || newRail)) {
                anchor(chunk, i, x);
                chunk = i;
            }
            if (newRail) {
                x = l.rail.get().start();
                y = 0;
            }
            if (!Double.isNaN(l.x)) {
                x = l.x + (l.rail.isPresent() ? l.rail.get().start() : 0);
            }
            y = Double.isNaN(l.y) || l.rail.isPresent() ? y : l.y;
            x += Double.isNaN(l.dx) ? 0 : l.dx;
            y += Double.isNaN(l.dy) ? 0 : l.dy;
            l.advance = advance(i);
            l.penX = x;
            l.penY = y - l.raised + Baselines.drop(l.style, l.font.font());
            l.degrees = Double.isNaN(l.rotate) ? 0 : l.rotate;
            x += l.advance;
            context.budget().effort(4);
        }
        if (!letters.isEmpty()) {
            anchor(chunk, letters.size(), x);
        }
        for (Letter l : letters) {
            if (l.rail.isPresent()) {
                bend(l);
            }
        }
    }

    private void anchor(int from, int to, double end) {
        double width = end - letters.get(from).penX;
        double shift = switch (letters.get(from).style.word(Property.TEXT_ANCHOR)) {
            case "middle" -> -width / 2;
            case "end" -> -width;
            default -> 0;
        };
        for (int i = from; i < to; i++) {
            letters.get(i).penX += shift;
        }
    }

    /** Puts a letter on its path: the middle of its advance lies on the path, letters past an end are hidden. */
    private static void bend(Letter l) {
        Rail rail = l.rail.orElseThrow();
        double middle = l.penX + l.advance / 2;
        if (middle < 0 || middle > rail.path().length()) {
            l.hidden = true;
            return;
        }
        double[] p = rail.path().place(middle);
        double up = l.penY;
        l.penX = p[0] - p[2] * l.advance / 2 - p[3] * up;
        l.penY = p[1] - p[3] * l.advance / 2 + p[2] * up;
        l.degrees += Math.toDegrees(Math.atan2(p[3], p[2]));
    }

    private static AffineTransform glyphPlace(Letter l) {
        AffineTransform place = AffineTransform.getTranslateInstance(l.penX, l.penY);
        if (l.degrees != 0) {
            place.rotate(Math.toRadians(l.degrees));
        }
        double size = l.style.fontSize();
        place.scale(size * l.stretch, size);
        return place;
    }

    /** The runs in order. */
    public List<TextRun> runs() {
        List<TextRun> runs = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= letters.size(); i++) {
            if (i == letters.size() || letters.get(i).style != letters.get(from).style
                    || letters.get(i).font.font() != letters.get(from).font.font()) {
                runs.add(run(from, i));
                from = i;
            }
        }
        return runs;
    }

    private TextRun run(int from, int to) {
        Path2D.Double path = new Path2D.Double(Path2D.WIND_NON_ZERO);
        StringBuilder text = new StringBuilder();
        for (int i = from; i < to; i++) {
            Letter l = letters.get(i);
            text.appendCodePoint(l.codePoint);
            if (!l.hidden && l.font.font().covers(l.codePoint)) {
                path.append(l.font.font().glyph(l.codePoint).getPathIterator(glyphPlace(l)), false);
            }
        }
        List<TextRun.Bar> below = new ArrayList<>();
        List<TextRun.Bar> above = new ArrayList<>();
        Letter first = letters.get(from);
        for (Decoration d : first.decorations) {
            (d.kind().equals("line-through") ? above : below).add(new TextRun.Bar(d.node(), d.style(),
                    bar(d, from, to)));
        }
        return new TextRun(first.node, first.style, first.font, text.toString(), path, below, above);
    }

    /** Rectangles along the baseline of the letters, joined where they go on straight. */
    private Path2D.Double bar(Decoration d, int from, int to) {
        Path2D.Double path = new Path2D.Double(Path2D.WIND_NON_ZERO);
        double top = d.middle() - d.thickness() / 2;
        double bottom = d.middle() + d.thickness() / 2;
        for (int i = from; i < to;) {
            Letter start = letters.get(i);
            int j = i + 1;
            while (j < to && start.degrees == 0 && letters.get(j).degrees == 0
                    && letters.get(j).penY == start.penY && Math.abs(letters.get(j).penX - letters.get(j - 1).penX
                            - letters.get(j - 1).advance) < 1e-6 * start.style.fontSize()) {
                j++;
            }
            Letter end = letters.get(j - 1);
            double width = start.degrees == 0 ? end.penX + end.advance - start.penX : start.advance;
            AffineTransform place = AffineTransform.getTranslateInstance(start.penX, start.penY);
            place.rotate(Math.toRadians(start.degrees));
            if (!start.hidden) {
                append(path, place, 0, top, width, bottom);
            }
            i = j;
        }
        return path;
    }

    private static void append(Path2D.Double path, AffineTransform place, double x, double y, double r, double b) {
        Path2D.Double box = new Path2D.Double();
        box.moveTo(x, y);
        box.lineTo(r, y);
        box.lineTo(r, b);
        box.lineTo(x, b);
        box.closePath();
        path.append(box.getPathIterator(place), false);
    }

    /** The cells of all letters, advance by ascent and descent: what the box of the text counts in. */
    public Path2D.Double cells() {
        Path2D.Double path = new Path2D.Double();
        for (Letter l : letters) {
            if (l.hidden) {
                continue;
            }
            AffineTransform place = AffineTransform.getTranslateInstance(l.penX, l.penY);
            place.rotate(Math.toRadians(l.degrees));
            double size = l.style.fontSize();
            append(path, place, 0, -l.font.font().ascent(size), l.advance, l.font.font().descent(size));
        }
        return path;
    }
}
