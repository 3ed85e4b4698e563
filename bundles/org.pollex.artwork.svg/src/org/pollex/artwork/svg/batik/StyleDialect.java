/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.pollex.artwork.ArtNotice.Kind;
import org.pollex.artwork.svg.gate.GateReport;
import org.pollex.artwork.svg.gate.SvgNode;

/**
 * Puts style properties into the words of SVG 1.1, wherever they stand: presentation attributes, {@code style}
 * attributes, style sheets. What Batik would paint wrongly without a word is taken out and named.
 */
final class StyleDialect {

    private static final Set<String> COLOURS = Set.of("fill", "stroke", "stop-color");
    private static final Set<String> OPACITIES = Set.of("opacity", "fill-opacity", "stroke-opacity", "stop-opacity");
    private static final Set<String> GEOMETRY = Set.of("x", "y", "cx", "cy", "r", "rx", "ry", "width", "height");
    /** Properties of SVG 1.1 that Batik reads and that matter on paper. */
    private static final Set<String> KNOWN = Set.of("fill", "stroke", "stop-color", "opacity", "fill-opacity",
            "stroke-opacity", "stop-opacity", "color", "fill-rule", "clip-rule", "clip-path", "display", "visibility",
            "overflow", "stroke-width", "stroke-linecap", "stroke-linejoin", "stroke-miterlimit", "stroke-dasharray",
            "stroke-dashoffset", "marker", "marker-start", "marker-mid", "marker-end", "font", "font-family",
            "font-size", "font-style", "font-weight", "font-stretch", "font-variant", "text-anchor",
            "text-decoration", "letter-spacing", "word-spacing", "baseline-shift", "dominant-baseline", "direction",
            "unicode-bidi", "kerning", "vector-effect", "writing-mode", "glyph-orientation-vertical",
            "alignment-baseline");
    /** Properties that change the picture and that no reader here draws, with the values that do no harm. */
    private static final Map<String, Set<String>> NAMED = Map.ofEntries(
            Map.entry("filter", Set.of("none")), Map.entry("mask", Set.of("none")),
            Map.entry("mask-image", Set.of("none")), Map.entry("backdrop-filter", Set.of("none")),
            Map.entry("mix-blend-mode", Set.of("normal")),
            Map.entry("paint-order", Set.of("normal", "fill", "fill stroke", "fill stroke markers")),
            Map.entry("transform-origin", Set.of("0 0", "0px 0px")),
            Map.entry("transform-box", Set.of("view-box")), Map.entry("offset-path", Set.of("none")),
            Map.entry("text-shadow", Set.of("none")), Map.entry("inline-size", Set.of("auto", "0")),
            Map.entry("shape-inside", Set.of("auto")), Map.entry("d", Set.of("none")),
            Map.entry("clip", Set.of("auto")), Map.entry("writing-mode", Set.of("lr", "lr-tb", "horizontal-tb")),
            Map.entry("color-interpolation", Set.of("auto", "srgb")), Map.entry("text-overflow", Set.of("clip")));
    private static final Pattern RULE = Pattern.compile("([^{}]*)\\{([^{}]*)\\}");
    private static final Pattern ANGLE = Pattern.compile("([+-]?[\\d.]+(?:e[+-]?\\d+)?)(deg|grad|rad|turn)");

    private final GateReport report;
    private final ShippedFamilies fonts;

    StyleDialect(GateReport report, ShippedFamilies fonts) {
        this.report = report;
        this.fonts = fonts;
    }

    void rewrite(SvgNode node) {
        Map<String, String> attributes = node.attributes();
        Map<String, String> found = new LinkedHashMap<>();
        for (String key : Set.copyOf(attributes.keySet())) {
            if (KNOWN.contains(key) || NAMED.containsKey(key) && !key.equals("d")) {
                found.put(key, attributes.remove(key));
            }
        }
        properties(node.where(), found).forEach((key, value) -> {
            if (!value.isEmpty()) {
                attributes.put(key, value);
            }
        });
        if (attributes.containsKey("style")) {
            style(node);
        }
        attributes.computeIfPresent("transform", (k, v) -> transform(v));
        attributes.computeIfPresent("gradientTransform", (k, v) -> transform(v));
        attributes.computeIfPresent("patternTransform", (k, v) -> transform(v));
        if (node.name().equals("style")) {
            String css = sheet(node.text());
            node.children().clear();
            node.children().add(css);
        }
    }

    private void style(SvgNode node) {
        Map<String, String> given = declarations(node.attribute("style"));
        for (String key : Set.copyOf(given.keySet())) {
            if (GEOMETRY.contains(key)) {
                node.attributes().put(key, given.remove(key));
            } else if (key.equals("transform")) {
                node.attributes().put("transform", given.remove(key).replace("px", ""));
            }
        }
        StringBuilder style = new StringBuilder();
        properties(node.where(), given).forEach((k, v) -> style.append(k).append(':').append(v).append(';'));
        node.attributes().put("style", style.toString());
    }

    private String sheet(String css) {
        StringBuilder out = new StringBuilder();
        Matcher rule = RULE.matcher(css);
        while (rule.find()) {
            String selector = rule.group(1).strip();
            StringBuilder body = new StringBuilder();
            Map<String, String> given = declarations(rule.group(2));
            if (given.keySet().removeAll(Set.of("transform", "cx", "cy", "r", "rx", "ry", "x", "y"))) {
                report.note(Kind.UNSUPPORTED, "geometry in a style sheet", GateReport.cut(selector),
                        "a style sheet moves or sizes shapes, which is not done; write it at the shapes");
            }
            properties(GateReport.cut(selector), given)
                    .forEach((k, v) -> body.append(k).append(':').append(v).append(';'));
            out.append(selector).append('{').append(body).append("}\n");
        }
        return out.toString();
    }

    private static Map<String, String> declarations(String text) {
        Map<String, String> found = new LinkedHashMap<>();
        for (String declaration : text.split(";")) {
            int colon = declaration.indexOf(':');
            if (colon > 0) {
                String key = declaration.substring(0, colon).strip().toLowerCase(Locale.ROOT);
                found.remove(key);
                found.put(key, declaration.substring(colon + 1).strip());
            }
        }
        return found;
    }

    private Map<String, String> properties(String where, Map<String, String> given) {
        Map<String, String> out = new LinkedHashMap<>();
        given.forEach((key, whole) -> {
            String important = whole.endsWith("!important") ? " !important" : "";
            String value = whole.substring(0, whole.length() - (important.isEmpty() ? 0 : 10)).strip();
            String lower = value.toLowerCase(Locale.ROOT);
            if (key.startsWith("--")) {
                return;
            }
            if (lower.contains("var(") || lower.contains("calc(") || lower.contains("env(")) {
                name(where, key, lower.replaceAll("\\(.*", "()"), value);
            } else if (NAMED.containsKey(key)) {
                if (!NAMED.get(key).contains(lower.replaceAll("\\s+", " "))) {
                    name(where, key, key, value);
                }
            } else if (KNOWN.contains(key)) {
                known(where, key, value, lower, important, out);
            }
        });
        return out;
    }

    private void known(String where, String key, String value, String lower, String important,
            Map<String, String> out) {
        if (COLOURS.contains(key) && (lower.equals("context-fill") || lower.equals("context-stroke"))) {
            name(where, lower, lower, value);
            out.put(key, "none");
        } else if (COLOURS.contains(key)) {
            Optional<ColourWords> words = ColourWords.of(value);
            out.put(key, words.map(ColourWords::hex).orElse(value) + important);
            if (words.isPresent() && words.get().opacity() < 1) {
                String opacity = key.equals("stop-color") ? "stop-opacity" : key + "-opacity";
                double before = out.containsKey(opacity) ? number(out.get(opacity)) : 1;
                out.put(opacity, (float) (before * words.get().opacity()) + important);
            }
        } else if (key.equals("font-family") && !lower.equals("inherit")) {
            out.put(key, fonts.alias(value) + important);
        } else if (key.equals("color")) {
            out.put(key, ColourWords.of(value).map(ColourWords::hex).orElse(value) + important);
        } else if (OPACITIES.contains(key)) {
            double own = number(value);
            double before = out.containsKey(key) && !key.equals("opacity") ? number(out.get(key)) : 1;
            out.put(key, (float) (own * before) + important);
        } else if (key.equals("clip-path") && lower.matches("(circle|ellipse|inset|polygon|path|rect|xywh)\\(.*")) {
            name(where, "clip-path", "clip-path " + lower.replaceAll("\\(.*", "()"), value);
        } else if (key.equals("stroke-linejoin") && (lower.equals("arcs") || lower.equals("miter-clip"))) {
            name(where, "stroke-linejoin", "stroke-linejoin " + lower, value);
        } else {
            out.put(key, value + important);
        }
    }

    private void name(String where, String key, String feature, String value) {
        report.note(Kind.UNSUPPORTED, feature, where, key + " " + GateReport.cut(value)
                + " is not drawn; flatten the art or convert it to plain shapes");
    }

    private static double number(String text) {
        try {
            return ColourWords.share(text.replace("!important", "").strip());
        } catch (NumberFormatException e) {
            return 1;
        }
    }

    private static String transform(String value) {
        Matcher m = ANGLE.matcher(value);
        StringBuilder out = new StringBuilder();
        while (m.find()) {
            m.appendReplacement(out, String.valueOf((float) ColourWords.degrees(m.group())));
        }
        m.appendTail(out);
        return out.toString().replace("px", "");
    }
}
