/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.gate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.pollex.artwork.ArtException;
import org.pollex.artwork.ReadLimits;

/**
 * Weighs what the file unfolds to when every {@code use}, pattern, marker, clip path and mask is put in its place,
 * without unfolding it: the weight of an element is worked out once and added wherever it is referred to. An element
 * that comes back to itself on the way is refused.
 */
final class Unfolding {

    /** Elements, path segments and depth after unfolding. */
    private record Weight(long elements, long segments, int depth) {

        static final long ENOUGH = 1L << 40;

        Weight plus(Weight inner, long times) {
            return new Weight(Math.min(ENOUGH, elements + inner.elements * times),
                    Math.min(ENOUGH, segments + inner.segments * times), Math.max(depth, inner.depth + 1));
        }
    }

    private static final Set<String> INHERITED = Set.of("fill", "stroke", "marker", "marker-start", "marker-mid",
            "marker-end");
    private static final Set<String> OWN = Set.of("clip-path", "mask", "filter");
    private static final Set<String> SHAPES = Set.of("path", "rect", "circle", "ellipse", "line", "polyline",
            "polygon", "text", "tspan", "textPath", "use");
    private static final long MOST_TESTS = 20_000_000;
    private static final Pattern TARGET = Pattern.compile("url\\(\\s*['\"]?#([^)'\"]*?)['\"]?\\s*\\)");

    private final GateReport report;
    private final ReadLimits limits;
    private final List<SheetReference> fromSheets;
    private final Map<String, SvgNode> byId = new HashMap<>();
    private final Map<SvgNode, Weight> known = new IdentityHashMap<>();
    private final Set<SvgNode> underWay = Collections.newSetFromMap(new IdentityHashMap<>());

    Unfolding(GateReport report, ReadLimits limits, List<SheetReference> fromSheets) {
        this.report = report;
        this.limits = limits;
        this.fromSheets = fromSheets;
    }

    void weigh(SvgNode root) throws ArtException {
        List<SvgNode> nodes = root.all();
        if ((long) nodes.size() * fromSheets.size() > MOST_TESTS) {
            throw report.refusal("its style sheets refer too often for so many elements; simplify the art and export "
                    + "it again");
        }
        for (SvgNode node : nodes) {
            byId.putIfAbsent(node.attribute("id"), node);
        }
        byId.remove("");
        Weight all = weight(root, 1);
        if (all.elements > limits.elements()) {
            throw report.refusal("with every use, pattern and marker in its place the art has more than "
                    + limits.elements() + " elements; simplify it and export it again");
        }
        if (all.segments > limits.segments()) {
            throw report.refusal("with every use, pattern and marker in its place the art has more than "
                    + limits.segments() + " path segments; simplify it and export it again");
        }
    }

    private Weight weight(SvgNode node, int level) throws ArtException {
        Weight before = known.get(node);
        if (before != null) {
            return before;
        }
        if (level > limits.depth()) {
            throw report.refusal("with every use in its place, elements are nested more than " + limits.depth()
                    + " deep; ungroup the art and export it again");
        }
        if (!underWay.add(node)) {
            throw report.refusal(node.name() + " " + node.where() + " refers to itself; ask for a repaired file");
        }
        long segments = segments(node);
        Weight sum = new Weight(1, segments, 1);
        for (SvgNode child : node.elements()) {
            sum = sum.plus(weight(child, level + 1), 1);
        }
        for (String id : targets(node)) {
            SvgNode target = byId.get(id);
            if (target != null) {
                long times = target.name().equals("marker") ? Math.max(1, segments) : 1;
                sum = sum.plus(weight(target, level + 1), times);
            }
        }
        underWay.remove(node);
        if (sum.depth > limits.depth()) {
            throw report.refusal("with every use in its place, elements are nested more than " + limits.depth()
                    + " deep; ungroup the art and export it again");
        }
        known.put(node, sum);
        return sum;
    }

    private List<String> targets(SvgNode node) {
        List<String> targets = new ArrayList<>();
        String href = node.attribute("href");
        if (href.startsWith("#")) {
            targets.add(href.substring(1));
        }
        for (String property : OWN) {
            addTarget(own(node, property), targets);
        }
        boolean shape = SHAPES.contains(node.name());
        if (shape) {
            for (String property : INHERITED) {
                addTarget(inherited(node, property), targets);
            }
        }
        for (SheetReference reference : fromSheets) {
            if (OWN.contains(reference.property()) ? reference.mayConcern(node) : shape && nearby(reference, node)) {
                targets.add(reference.target());
            }
        }
        return new ArrayList<>(new HashSet<>(targets));
    }

    private static boolean nearby(SheetReference reference, SvgNode node) {
        for (SvgNode up = node; up != null; up = up.parent().orElse(null)) {
            if (reference.mayConcern(up)) {
                return true;
            }
        }
        return false;
    }

    private static void addTarget(String value, List<String> targets) {
        if (value.indexOf('#') > 0) {
            Matcher m = TARGET.matcher(value);
            if (m.find()) {
                targets.add(m.group(1));
            }
        }
    }

    private static String inherited(SvgNode node, String property) {
        for (SvgNode up = node; up != null; up = up.parent().orElse(null)) {
            String value = own(up, property);
            if (!value.isEmpty()) {
                return value;
            }
        }
        return "";
    }

    private static String own(SvgNode node, String property) {
        String style = node.attribute("style");
        if (style.contains(property)) {
            for (String declaration : style.split(";")) {
                int colon = declaration.indexOf(':');
                if (colon > 0 && declaration.substring(0, colon).strip().equals(property)) {
                    return declaration.substring(colon + 1).strip();
                }
            }
        }
        return node.attribute(property);
    }

    private static long segments(SvgNode node) {
        String data = node.attribute(node.name().equals("path") ? "d" : "points");
        long numbers = 0;
        boolean inside = false;
        for (int i = 0; i < data.length(); i++) {
            char c = data.charAt(i);
            boolean digit = c >= '0' && c <= '9' || c == '.';
            if (digit && !inside) {
                numbers++;
            }
            inside = digit;
        }
        return numbers / 2 + (SHAPES.contains(node.name()) ? 4 : 0);
    }
}
