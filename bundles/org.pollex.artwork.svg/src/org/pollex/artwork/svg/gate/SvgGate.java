/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.gate;

import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;

/**
 * Answers whether an SVG is safe to hand on, and gives back what of it is. The file is parsed without reading anything
 * else; its own entities are expanded under bounds; scripts, handlers, animation and foreign elements go; references
 * that leave the file go; what {@code use}, patterns, markers, clips and masks unfold to is weighed; numbers beyond
 * {@value NumberRules#LARGEST} are refused. Everything taken out is in the notices.
 * <p>
 * Bounds on work that only shows when shapes are drawn (dashes, pattern tiles) are kept by the reader that draws.
 */
public final class SvgGate {

    private SvgGate() {
    }

    /** Whether the bytes are a compressed file or text whose first element is {@code svg}, whatever its prefix. */
    public static boolean looksLikeSvg(byte[] bytes) {
        return Unpacking.isPacked(bytes) || FirstElement.isSvg(bytes);
    }

    /**
     * Checks and cleans.
     *
     * @throws ArtException in one sentence, when the file is damaged, too heavy or refers to itself
     */
    public static CleanSvg clean(ArtSource source, ReadLimits limits) throws ArtException {
        GateReport report = new GateReport(source.name());
        SvgNode root = new SafeParse(report, limits).read(Unpacking.plain(source, limits));
        SheetRules sheets = new SheetRules(report);
        sheets.clean(root);
        new ReferenceRules(report, limits, sheets).clean(root);
        new NumberRules(report).check(root);
        new Unfolding(report, limits, sheets.references()).weigh(root);
        return new CleanSvg(root, report.notices());
    }
}
