/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.gate;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.pollex.artwork.ArtException;

/** Refuses numbers so large that single precision loses them or that drawing would take for ever. */
final class NumberRules {

    /** Largest amount of a coordinate, length or factor in the file's own units. */
    static final int LARGEST = 1_000_000;

    private static final Set<String> NUMERIC = Set.of("x", "y", "width", "height", "cx", "cy", "r", "rx", "ry", "x1",
            "y1", "x2", "y2", "dx", "dy", "fx", "fy", "fr", "d", "points", "transform", "viewBox", "stroke-width",
            "font-size", "stroke-dasharray", "stroke-dashoffset", "stroke-miterlimit", "patternTransform",
            "gradientTransform", "markerWidth", "markerHeight", "refX", "refY", "rotate", "textLength", "startOffset",
            "letter-spacing", "word-spacing", "style", "opacity", "fill-opacity", "stroke-opacity", "offset");
    private static final Pattern LONG_NUMBER = Pattern.compile(
            "(?<![\\w#.])[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?");

    private final GateReport report;

    NumberRules(GateReport report) {
        this.report = report;
    }

    void check(SvgNode root) throws ArtException {
        for (SvgNode node : root.all()) {
            for (var entry : node.attributes().entrySet()) {
                if (NUMERIC.contains(entry.getKey())) {
                    check(node, entry.getKey(), entry.getValue());
                }
            }
            if (node.name().equals("style")) {
                check(node, "style", node.text());
            }
        }
    }

    private void check(SvgNode node, String key, String value) throws ArtException {
        if (!mayBeLarge(value)) {
            return;
        }
        Matcher m = (key.equals("d") ? LONG_IN_PATH : LONG_NUMBER).matcher(value);
        while (m.find()) {
            if (m.end() - m.start() > 6 || m.group().indexOf('e') >= 0 || m.group().indexOf('E') >= 0) {
                double number = Double.parseDouble(m.group());
                if (!(Math.abs(number) <= LARGEST)) {
                    throw report.refusal(node.where() + " has the number " + GateReport.cut(m.group()) + " in "
                            + key + ", beyond " + LARGEST + "; scale the art down and export it again");
                }
            }
        }
    }

    /** In path data a number may follow a letter. */
    private static final Pattern LONG_IN_PATH = Pattern.compile(
            "[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?");

    /** A quick look spares almost all values the pattern: seven digits in a row, or an exponent. */
    private static boolean mayBeLarge(String value) {
        int run = 0;
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c >= '0' && c <= '9') {
                if (++run >= 7) {
                    return true;
                }
            } else {
                if (run > 0 && (c == 'e' || c == 'E')) {
                    return true;
                }
                run = c == '.' ? -1000 : 0;
            }
        }
        return false;
    }
}
