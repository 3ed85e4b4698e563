/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtNotice.Kind;
import org.pollex.artwork.svg.gate.GateReport;
import org.pollex.artwork.svg.gate.SvgNode;

/**
 * Puts a cleaned tree into the SVG 1.1 that Batik reads without failing or going wrong: style words, arcs as curves,
 * elements without what they need left out as SVG 1.1 says, references to nothing taken away.
 */
final class BatikDialect {

    private static final Map<String, Set<String>> NEEDED = Map.of("rect", Set.of("width", "height"), "circle",
            Set.of("r"), "ellipse", Set.of("rx", "ry"), "polygon", Set.of("points"), "polyline", Set.of("points"),
            "path", Set.of("d"));
    private static final Set<String> NOT_NEGATIVE = Set.of("width", "height", "r", "rx", "ry");
    private static final Set<String> SIZES = Set.of("x", "y", "width", "height", "rx", "ry");
    private static final Set<String> PAINTS = Set.of("linearGradient", "radialGradient", "pattern");
    private static final Set<String> LEFT_OUT = Set.of("filter", "mask");
    private static final Pattern TARGET = Pattern.compile("url\\(\\s*['\"]?#([^)'\"]*?)['\"]?\\s*\\)");
    private static final Pattern DECLARED = Pattern.compile("([\\w-]+)(\\s*:\\s*)(url\\([^)]*\\))([^;}]*)");

    private final GateReport report;
    private final StyleDialect styles;
    private final Map<String, SvgNode> byId = new HashMap<>();
    private final PageSize page;
    private boolean middleMarkers;

    BatikDialect(GateReport report, PageSize page, ShippedFamilies fonts) {
        this.report = report;
        this.page = page;
        this.styles = new StyleDialect(report, fonts);
    }

    void rewrite(SvgNode root) throws ArtException {
        for (SvgNode node : root.all()) {
            byId.putIfAbsent(node.attribute("id"), node);
            styles.rewrite(node);
            middleMarkers |= !node.attribute("marker-mid").isEmpty() || !node.attribute("marker").isEmpty()
                    || node.attribute("style").contains("marker") || node.name().equals("style")
                    && node.text().contains("marker");
        }
        byId.remove("");
        root(root);
        descend(root);
    }

    private void root(SvgNode root) {
        Map<String, String> a = root.attributes();
        double w = page.width() / PageSize.MM_PER_PX;
        double h = page.height() / PageSize.MM_PER_PX;
        a.put("width", String.valueOf(w));
        a.put("height", String.valueOf(h));
        a.keySet().removeAll(Set.of("x", "y", "transform", "version", "baseProfile", "zoomAndPan", "contentScriptType",
                "contentStyleType"));
        if (PageSize.viewBox(root.attribute("viewBox")).length == 0) {
            a.remove("viewBox");
        }
    }

    private void descend(SvgNode node) throws ArtException {
        for (Iterator<Object> it = node.children().iterator(); it.hasNext();) {
            if (it.next() instanceof SvgNode child) {
                if (keeps(child)) {
                    if (child.name().equals("clipPath")) {
                        plainClip(child);
                    }
                    descend(child);
                } else {
                    it.remove();
                }
            }
        }
    }

    /** Batik cuts away what a clip of a clip should keep. */
    private void plainClip(SvgNode clip) {
        for (SvgNode node : clip.all()) {
            String style = node.attribute("style");
            if (node.attributes().remove("clip-path") != null || style.contains("clip-path")) {
                node.attributes().put("style", style.replaceAll("clip-path:[^;]*;?", ""));
                report.note(Kind.UNSUPPORTED, "clip-path", node,
                        "a clip path that is clipped itself is used whole; draw the remaining shape");
            }
        }
    }

    private boolean keeps(SvgNode node) throws ArtException {
        String name = node.name();
        if (LEFT_OUT.contains(name)) {
            return false;
        }
        node.attributes().entrySet().removeIf(e -> SIZES.contains(e.getKey()) && e.getValue().strip().equals("auto"));
        for (String key : NEEDED.getOrDefault(name, Set.of())) {
            String value = node.attribute(key).strip();
            if (value.isEmpty() && name.equals("ellipse")) {
                String other = node.attribute(key.equals("rx") ? "ry" : "rx").strip();
                node.attributes().put(key, other);
                value = other;
            }
            if (value.isEmpty() || NOT_NEGATIVE.contains(key) && isNotAbove0(value)) {
                return false;
            }
        }
        node.attributes().entrySet().removeIf(e -> NOT_NEGATIVE.contains(e.getKey()) && e.getValue().startsWith("-"));
        if (name.equals("pattern") && (node.attribute("width").isEmpty() || node.attribute("height").isEmpty())
                && node.attribute("href").isEmpty()) {
            node.attributes().put("width", "0");
            node.attributes().put("height", "0");
        }
        if (name.equals("stop") && node.attribute("offset").isBlank()) {
            node.attributes().put("offset", "0");
        }
        if (name.equals("path")) {
            path(node);
        } else if (name.equals("polygon") || name.equals("polyline")) {
            points(node);
        }
        references(node);
        return !name.equals("use") || byId.containsKey(node.attribute("href").replaceFirst("^#", ""));
    }

    private static boolean isNotAbove0(String value) {
        Matcher m = Pattern.compile("[+-]?[\\d.]+(e[+-]?\\d+)?").matcher(value);
        try {
            return !m.lookingAt() || !(Double.parseDouble(m.group()) > 0);
        } catch (NumberFormatException e) {
            return true;
        }
    }

    private void path(SvgNode node) throws ArtException {
        String data = node.attribute("d");
        PathText text = PathText.of(data);
        if (!text.sound()) {
            report.note(Kind.UNSUPPORTED, "path data", node, "the path data is broken and was used up to there");
        }
        CrossingCaps.check(node, text.path(), report);
        if (!text.sound() || text.arcs() && !middleMarkers) {
            node.attributes().put("d", text.written());
        }
    }

    private void points(SvgNode node) throws ArtException {
        PathText text = PathText.of("M" + node.attribute("points"));
        CrossingCaps.check(node, text.path(), report);
        if (!text.sound()) {
            report.note(Kind.UNSUPPORTED, "points", node, "the points are broken and were used up to there");
            node.attributes().put("points", text.written().replaceAll("[MLQCZ]", " ").strip());
        }
    }

    private void references(SvgNode node) {
        String href = node.attribute("href");
        if (href.startsWith("#") && !byId.containsKey(href.substring(1))) {
            report.note(Kind.UNSUPPORTED, node.name(), node, "it refers to " + GateReport.cut(href)
                    + ", which is not in the file, and was left out");
            node.attributes().remove("href");
        }
        for (var entry : node.attributes().entrySet()) {
            if (entry.getKey().equals("style")) {
                entry.setValue(declared(node, entry.getValue()));
            } else if (entry.getValue().startsWith("url(")) {
                entry.setValue(value(node, entry.getKey(), entry.getValue()));
            }
        }
        if (node.name().equals("style")) {
            String css = declared(node, node.text());
            node.children().clear();
            node.children().add(css);
        }
    }

    private String declared(SvgNode node, String css) {
        Matcher m = DECLARED.matcher(css);
        StringBuilder out = new StringBuilder();
        while (m.find()) {
            m.appendReplacement(out, Matcher.quoteReplacement(m.group(1) + m.group(2)
                    + value(node, m.group(1), m.group(3) + m.group(4))));
        }
        m.appendTail(out);
        return out.toString();
    }

    private String value(SvgNode node, String property, String value) {
        Matcher m = TARGET.matcher(value);
        if (!m.lookingAt()) {
            return value;
        }
        SvgNode target = byId.get(m.group(1));
        boolean paint = property.equals("fill") || property.equals("stroke");
        boolean fits = target != null && switch (property) {
            case "fill", "stroke" -> PAINTS.contains(target.name());
            case "clip-path" -> target.name().equals("clipPath");
            default -> !property.startsWith("marker") || target.name().equals("marker");
        };
        if (fits) {
            return value;
        }
        String rest = value.substring(m.end()).strip();
        report.note(Kind.UNSUPPORTED, property, node, "it refers to #" + GateReport.cut(m.group(1))
                + ", which is not in the file or of another kind, and was left out");
        return paint && !rest.isEmpty() ? rest : "none";
    }
}
