/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.text;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.BeyondReaderException;
import org.pollex.artwork.font.FontMatch;
import org.pollex.artwork.svg.reader.stroke.PathMeasure;
import org.pollex.artwork.svg.reader.style.Property;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.syntax.Cursor;
import org.pollex.artwork.svg.reader.syntax.Length;
import org.pollex.artwork.svg.reader.tree.Node;

/** Gathers the characters of a text element with their styles and the positions that the lists of attributes give. */
final class TextCollector {

    private final TextContext context;
    private final List<Letter> letters = new ArrayList<>();
    private final List<LengthRange> ranges = new ArrayList<>();
    private boolean afterSpace = true;

    /** Letters that {@code textLength} of an element sets to a length. */
    record LengthRange(Node node, int from, int to, double length, boolean glyphs) {
    }

    TextCollector(TextContext context) {
        this.context = context;
    }

    List<Letter> letters() {
        return letters;
    }

    /** Innermost first. */
    List<LengthRange> ranges() {
        return ranges;
    }

    void collect(Node text, Style style) throws ArtException {
        collect(text, style, List.of(), Optional.empty(), 0);
        int last = letters.size() - 1;
        if (last >= 0 && letters.get(last).codePoint == ' ' && !preserves(letters.get(last).node,
                letters.get(last).style)) {
            letters.remove(last);
        }
    }

    private void collect(Node node, Style style, List<Decoration> outer, Optional<Rail> rail, double raised)
            throws ArtException {
        context.budget().enter();
        int from = letters.size();
        FontMatch font = Fonts.match(node, style, context);
        List<Decoration> decorations = decorations(node, style, outer, font);
        for (Node child : node.children()) {
            if (child.isText()) {
                append(child.text(), node, style, font, decorations, rail, raised);
            } else if (child.isSvg()) {
                child(child, style, decorations, rail, raised);
            }
        }
        position(node, style, from);
        context.budget().leave();
    }

    private void child(Node child, Style parent, List<Decoration> decorations, Optional<Rail> rail, double raised)
            throws ArtException {
        switch (child.name()) {
            case "tspan", "a", "textPath" -> {
                context.budget().element();
                Style style = context.cascade().style(child, parent);
                if (style.displayed()) {
                    Optional<Rail> own = rail;
                    if (child.name().equals("textPath")) {
                        own = rail(child, style);
                        if (own.isEmpty()) {
                            return;
                        }
                    }
                    collect(child, style, decorations, own, raised + Baselines.raise(style, parent.fontSize()));
                }
            }
            case "tref", "altGlyph" -> throw new BeyondReaderException(context.budget().file(),
                    "the element " + child.name());
            case "title", "desc", "metadata", "animate", "set", "animateTransform", "animateMotion" -> {
            }
            default -> context.notices().unsupported(child.name(), child.label(),
                    "this element does not belong in text and is not drawn; put it outside of the text");
        }
    }

    private Optional<Rail> rail(Node node, Style style) throws ArtException {
        if (node.attribute("side").strip().equals("right") || node.attribute("method").strip().equals("stretch")) {
            context.notices().unsupported("textPath", node.label(),
                    "text on the other side of a path, or stretched along it, is set plainly; convert it to paths");
        }
        Optional<Path2D.Double> path = context.paths().find(node);
        if (path.isEmpty()) {
            return Optional.empty();
        }
        PathMeasure measure = new PathMeasure(path.get());
        if (!(measure.length() > 0)) {
            return Optional.empty();
        }
        double claimed = Length.parse(node.attribute("pathLength")).map(Length::value).orElse(0.0);
        double scale = claimed > 0 ? measure.length() / claimed : 1;
        Optional<Length> offset = Length.parse(node.attribute("startOffset"));
        double start = offset.map(l -> l.unit() == Length.Unit.PERCENT ? l.value() / 100 * measure.length()
                : l.resolve(0, style.fontSize()) * scale).orElse(0.0);
        return Optional.of(new Rail(measure, start));
    }

    private static List<Decoration> decorations(Node node, Style style, List<Decoration> outer, FontMatch font) {
        String words = style.word(Property.TEXT_DECORATION);
        if (words.equals("none")) {
            return outer;
        }
        List<Decoration> all = new ArrayList<>(outer);
        for (String word : words.split("\\s+")) {
            if (word.equals("underline") || word.equals("overline") || word.equals("line-through")) {
                all.add(new Decoration(word, node, style, font.font()));
            }
        }
        return all;
    }

    private static boolean preserves(Node node, Style style) {
        String white = style.word(Property.WHITE_SPACE);
        if (!white.isEmpty()) {
            return white.startsWith("pre") || white.equals("break-spaces");
        }
        for (Node n = node; n != null; n = n.parent().orElse(null)) {
            if (n.has("xml:space")) {
                return n.attribute("xml:space").equals("preserve");
            }
        }
        return false;
    }

    private void append(String text, Node node, Style style, FontMatch font, List<Decoration> decorations,
            Optional<Rail> rail, double raised) throws ArtException {
        boolean preserve = preserves(node, style);
        String cased = switch (style.word(Property.TEXT_TRANSFORM)) {
            case "uppercase" -> text.toUpperCase(Locale.ROOT);
            case "lowercase" -> text.toLowerCase(Locale.ROOT);
            default -> text;
        };
        boolean capitals = style.word(Property.TEXT_TRANSFORM).equals("capitalize");
        context.budget().segments(cased.length());
        for (int i = 0; i < cased.length();) {
            int c = cased.codePointAt(i);
            i += Character.charCount(c);
            if (c == '\n' || c == '\r' || c == '\t') {
                c = ' ';
            }
            if (c == ' ' && !preserve && afterSpace || isInvisible(c)) {
                continue;
            }
            if (capitals && afterSpace) {
                c = Character.toTitleCase(c);
            }
            afterSpace = c == ' ';
            letters.add(new Letter(c, node, style, Fonts.covering(font, c, node, context), decorations, rail, raised));
        }
    }

    /** Controls and joiners that have no glyph of their own. */
    private static boolean isInvisible(int c) {
        return c < ' ' || c == 0xad || c >= 0x200b && c <= 0x200f || c >= 0x202a && c <= 0x202e || c == 0xfeff
                || c >= 0xfe00 && c <= 0xfe0f || c >= 0x2060 && c <= 0x2064;
    }

    /** Hands the lists of positions out to the letters that inner elements have not placed. */
    private void position(Node node, Style style, int from) {
        List<Double> x = list(node.attribute("x"), context.width(), style);
        List<Double> y = list(node.attribute("y"), context.height(), style);
        List<Double> dx = list(node.attribute("dx"), context.width(), style);
        List<Double> dy = list(node.attribute("dy"), context.height(), style);
        List<Double> rotate = list(node.attribute("rotate"), 0, style);
        for (int i = from; i < letters.size(); i++) {
            Letter l = letters.get(i);
            int k = i - from;
            l.x = pick(l.x, x, k);
            l.y = pick(l.y, y, k);
            l.dx = pick(l.dx, dx, k);
            l.dy = pick(l.dy, dy, k);
            l.rotate = pick(l.rotate, rotate, Math.min(k, rotate.size() - 1));
        }
        String wanted = node.attribute("textLength");
        if (!wanted.isEmpty() && letters.size() > from) {
            double length = Length.parse(wanted).map(l -> l.resolve(context.width(), style.fontSize())).orElse(-1.0);
            if (length > 0) {
                ranges.add(new LengthRange(node, from, letters.size(), length,
                        node.attribute("lengthAdjust").strip().equals("spacingAndGlyphs")));
            }
        }
    }

    private static double pick(double before, List<Double> list, int k) {
        return Double.isNaN(before) && k >= 0 && k < list.size() ? list.get(k) : before;
    }

    private static List<Double> list(String text, double full, Style style) {
        List<Double> list = new ArrayList<>();
        if (text.isEmpty()) {
            return list;
        }
        Cursor c = new Cursor(text);
        c.spaces();
        while (!c.done()) {
            Optional<Length> length = Length.next(c);
            if (length.isEmpty()) {
                return list;
            }
            list.add(length.get().resolve(full, style.fontSize()));
            c.comma();
        }
        return list;
    }
}
