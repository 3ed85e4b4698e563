/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.gate;

import java.util.Iterator;
import java.util.Locale;
import java.util.Set;

import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtNotice.Kind;
import org.pollex.artwork.ReadLimits;

/**
 * Lets through only references to the same file, and pictures that the file itself holds and that are not too large.
 */
final class ReferenceRules {

    /** Elements that make no sense without what they refer to. */
    private static final Set<String> EMPTY_WITHOUT = Set.of("use", "image", "feImage", "textPath");

    private final GateReport report;
    private final ReadLimits limits;
    private final SheetRules sheets;

    ReferenceRules(GateReport report, ReadLimits limits, SheetRules sheets) {
        this.report = report;
        this.limits = limits;
        this.sheets = sheets;
    }

    void clean(SvgNode root) throws ArtException {
        for (SvgNode node : root.all()) {
            for (var entry : node.attributes().entrySet()) {
                if (!entry.getKey().equals("style") && !entry.getKey().equals("href")) {
                    entry.setValue(sheets.value(node, entry.getValue()));
                }
            }
            for (Iterator<Object> it = node.children().iterator(); it.hasNext();) {
                if (it.next() instanceof SvgNode child && !keeps(child)) {
                    it.remove();
                }
            }
        }
    }

    private boolean keeps(SvgNode node) throws ArtException {
        String href = node.attribute("href").strip();
        if (href.isEmpty()) {
            return !EMPTY_WITHOUT.contains(node.name());
        }
        if (node.name().equals("a")) {
            node.attributes().remove("href");
            return true;
        }
        if (href.startsWith("#") && !node.name().equals("image")) {
            node.attributes().put("href", href);
            return true;
        }
        if (node.name().equals("image") && isPicture(href)) {
            EmbeddedPicture.check(node, href, limits, report);
            return true;
        }
        boolean inside = href.regionMatches(true, 0, "data:", 0, 5) || href.startsWith("#");
        report.note(Kind.REFUSED, node.name() + " href", node, inside
                ? "the " + node.name() + " holds neither a PNG nor a JPEG picture and was left out"
                : "the reference to " + GateReport.cut(href) + " was left out, art reads no other file");
        node.attributes().remove("href");
        return !EMPTY_WITHOUT.contains(node.name());
    }

    private static boolean isPicture(String href) {
        String head = href.substring(0, Math.min(href.length(), 64)).toLowerCase(Locale.ROOT).replaceAll("\\s", "");
        return head.startsWith("data:image/png;base64,") || head.startsWith("data:image/jpeg;base64,")
                || head.startsWith("data:image/jpg;base64,");
    }
}
