/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.gate;

import java.util.Set;

import org.pollex.artwork.ArtNotice.Kind;
import org.xml.sax.Attributes;

/** Says which elements of the SVG namespace no reader sees, and why. */
final class DroppedElements {

    private static final Set<String> RUNS = Set.of("script", "handler", "listener");
    private static final Set<String> MOVES = Set.of("animate", "animateColor", "animateMotion", "animateTransform",
            "set", "mpath", "discard", "animation");
    private static final Set<String> FOREIGN = Set.of("foreignObject", "iframe", "video", "audio", "canvas", "embed",
            "object", "tref", "solidColor", "meshGradient", "meshgradient", "mesh", "hatch", "flowRoot");
    private static final Set<String> FONTS = Set.of("font", "font-face", "glyph", "missing-glyph", "altGlyph",
            "altGlyphDef", "hkern", "vkern");
    private static final Set<String> SILENT = Set.of("metadata", "title", "desc", "view", "cursor", "color-profile");

    private DroppedElements() {
    }

    static boolean drops(SvgNode node, Attributes given, GateReport report) {
        String name = node.name();
        String id = given.getValue("id");
        String where = id == null || id.isEmpty() ? node.where() : GateReport.cut(id);
        if (SILENT.contains(name)) {
            return true;
        }
        if (RUNS.contains(name)) {
            report.note(Kind.REFUSED, name, where, "a script was left out, art runs nothing");
            return true;
        }
        if (MOVES.contains(name)) {
            report.note(Kind.IGNORED, name, where, "an animation was left out, print stands still");
            return true;
        }
        if (FOREIGN.contains(name)) {
            report.note(Kind.UNSUPPORTED, name, where, name + " is not painted; convert it to paths");
            return true;
        }
        if (FONTS.contains(name)) {
            report.note(Kind.UNSUPPORTED, name, where, "a font inside the file is not used; convert text to paths");
            return true;
        }
        return false;
    }
}
