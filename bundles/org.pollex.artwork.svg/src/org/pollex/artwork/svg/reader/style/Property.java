/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.style;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.pollex.artwork.svg.reader.syntax.Colour;
import org.pollex.artwork.svg.reader.syntax.Length;

/** The properties that matter for what is painted, with what they are at first and whether children get them. */
public enum Property {
    COLOR("color", true, new PaintValue.Solid(Colour.BLACK), Values::colour),
    FILL("fill", true, new PaintValue.Solid(Colour.BLACK), Values::paint),
    FILL_OPACITY("fill-opacity", true, 1.0, Values::share),
    FILL_RULE("fill-rule", true, "nonzero", Values.word("nonzero", "evenodd")),
    CLIP_RULE("clip-rule", true, "nonzero", Values.word("nonzero", "evenodd")),
    STROKE("stroke", true, PaintValue.NONE, Values::paint),
    STROKE_OPACITY("stroke-opacity", true, 1.0, Values::share),
    STROKE_WIDTH("stroke-width", true, new Length(1, Length.Unit.NONE), Values::size),
    STROKE_LINECAP("stroke-linecap", true, "butt", Values.word("butt", "round", "square")),
    STROKE_LINEJOIN("stroke-linejoin", true, "miter", Values.word("miter", "miter-clip", "round", "bevel", "arcs")),
    STROKE_MITERLIMIT("stroke-miterlimit", true, 4.0, Values::limit),
    STROKE_DASHARRAY("stroke-dasharray", true, List.of(), Values::dashes),
    STROKE_DASHOFFSET("stroke-dashoffset", true, Length.ZERO, Values::length),
    MARKER_START("marker-start", true, "none", Values::text),
    MARKER_MID("marker-mid", true, "none", Values::text),
    MARKER_END("marker-end", true, "none", Values::text),
    PAINT_ORDER("paint-order", true, "normal", Values::text),
    VISIBILITY("visibility", true, "visible", Values.word("visible", "hidden", "collapse")),
    DISPLAY("display", false, "inline", Values::text),
    OPACITY("opacity", false, 1.0, Values::share),
    OVERFLOW("overflow", false, "", Values.word("visible", "hidden", "scroll", "auto", "clip")),
    CLIP_PATH("clip-path", false, "none", Values::text),
    MASK("mask", false, "none", Values::text),
    MASK_TYPE("mask-type", false, "luminance", Values.word("luminance", "alpha")),
    FILTER("filter", false, "none", Values::text),
    BLEND("mix-blend-mode", false, "normal", Values::text),
    VECTOR_EFFECT("vector-effect", false, "none", Values::text),
    TRANSFORM("transform", false, "", Values::text),
    TRANSFORM_ORIGIN("transform-origin", false, "", Values::text),
    TRANSFORM_BOX("transform-box", false, "view-box", Values.word("view-box", "fill-box", "stroke-box", "border-box",
            "content-box")),
    FONT_FAMILY("font-family", true, "", Values::text),
    FONT_SIZE("font-size", true, 16.0, text -> null),
    FONT_WEIGHT("font-weight", true, 400, Values::weight),
    FONT_STYLE("font-style", true, "normal", Values::text),
    TEXT_ANCHOR("text-anchor", true, "start", Values.word("start", "middle", "end")),
    LETTER_SPACING("letter-spacing", true, Length.ZERO, Values::spacing),
    WORD_SPACING("word-spacing", true, Length.ZERO, Values::spacing),
    BASELINE_SHIFT("baseline-shift", false, "baseline", Values::text),
    DOMINANT_BASELINE("dominant-baseline", true, "auto", Values::text),
    ALIGNMENT_BASELINE("alignment-baseline", false, "auto", Values::text),
    TEXT_DECORATION("text-decoration", false, "none", Values::text),
    TEXT_TRANSFORM("text-transform", true, "none", Values::text),
    FONT_VARIANT("font-variant", true, "normal", Values::text),
    WRITING_MODE("writing-mode", true, "lr-tb", Values::text),
    DIRECTION("direction", true, "ltr", Values.word("ltr", "rtl")),
    WHITE_SPACE("white-space", true, "", Values::text),
    STOP_COLOR("stop-color", false, new PaintValue.Solid(Colour.BLACK), Values::colour),
    STOP_OPACITY("stop-opacity", false, 1.0, Values::share);

    private static final Map<String, Property> BY_NAME = new HashMap<>();
    private static final Property[] ALL = values();

    static {
        for (Property p : ALL) {
            BY_NAME.put(p.cssName, p);
        }
        BY_NAME.put("text-decoration-line", TEXT_DECORATION);
        BY_NAME.put("font-variant-caps", FONT_VARIANT);
    }

    private final String cssName;
    private final boolean inherited;
    private final Object initial;
    private final Function<String, Object> parser;

    Property(String cssName, boolean inherited, Object initial, Function<String, Object> parser) {
        this.cssName = cssName;
        this.inherited = inherited;
        this.initial = initial;
        this.parser = parser;
    }

    /** The property of a CSS name in lower case; null when there is none here. */
    static Property find(String name) {
        return BY_NAME.get(name);
    }

    static Property[] all() {
        return ALL;
    }

    String cssName() {
        return cssName;
    }

    boolean inherited() {
        return inherited;
    }

    Object initial() {
        return initial;
    }

    /** The value, null when the text is none of this property. */
    Object parse(String text) {
        return parser.apply(text);
    }
}
