/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;

import org.apache.batik.gvt.GraphicsNode;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtNotice;
import org.pollex.artwork.ArtReader;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;
import org.pollex.artwork.svg.gate.CleanSvg;
import org.pollex.artwork.svg.gate.GateReport;
import org.pollex.artwork.svg.gate.SvgGate;
import org.pollex.artwork.svg.gate.SvgNode;
import org.pollex.artwork.weight.ArtWeight;

/**
 * Reads SVG through Batik after the gate. Lengths are as exact as Batik's single precision lets them be, about 1e-7 of
 * the page. Masks, filters, blend modes and the like are named, not drawn. Neither time nor memory is bounded here:
 * call it in a process that may be ended.
 */
public final class BatikReader implements ArtReader {

    @Override
    public boolean recognises(ArtSource source) {
        return SvgGate.looksLikeSvg(source.bytes());
    }

    @Override
    public Art read(ArtSource source, ReadLimits limits) throws ArtException {
        return read(SvgGate.clean(source, limits), source.name(), limits);
    }

    /**
     * Reads a file that passed the gate.
     *
     * @param clean  its tree, which is changed
     * @param name   file in messages
     */
    public Art read(CleanSvg clean, String name, ReadLimits limits) throws ArtException {
        GateReport report = new GateReport(name);
        SvgNode root = clean.root();
        PageSize page = PageSize.of(root);
        ShippedFamilies fonts = new ShippedFamilies();
        Pictures pictures = new Pictures(report);
        pictures.takeOut(root);
        new BatikDialect(report, page, fonts).rewrite(root);
        TextRuns texts = new TextRuns(report);
        NodeWalk walk;
        try {
            MappedBuilder builder = new MappedBuilder();
            ClosedContext context = new ClosedContext(new ClosedUserAgent(report, page, fonts), builder);
            GraphicsNode tree = builder.build(context, DocumentBuilder.of(root));
            walk = new NodeWalk(report, builder.elements(), pictures, texts, limits.elements());
            walk.walk(tree, AffineTransform.getScaleInstance(PageSize.MM_PER_PX, PageSize.MM_PER_PX), List.of());
            context.dispose();
        } catch (TooHeavyException e) {
            throw report.refusal(e.getMessage());
        } catch (RuntimeException e) {
            throw report.refusal("it holds something that cannot be read ("
                    + GateReport.cut(ClosedUserAgent.said(e)) + "); convert it to plain paths and export it again");
        }
        List<ArtNotice> notices = new ArrayList<>(clean.notices());
        notices.addAll(report.notices());
        Art art = new Art(name, page.width(), page.height(), page.sized(), walk.regions(), texts.texts(), notices);
        ArtWeight.check(art, name);
        return art;
    }
}
