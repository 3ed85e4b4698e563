/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.crowd;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.shape.Hull;
import org.pollex.geometry.shape.PointInZone;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.WidthField;
import org.pollex.geometry.width.WidthSpread;
import org.pollex.model.catalogue.Method;
import org.pollex.print.PrintedType;
import org.pollex.rules.CheckContext;
import org.pollex.rules.SideMeasures;

/**
 * From which scale the detail of a group holds. Lines are measured by the width that the thinner quarter of their
 * length does not exceed, gaps by the median of those that are no wider than a few times the limit, lettering by its
 * smallest x-height: a tenth of all places would be the corners of letters and say nothing of the group.
 */
final class Needs {

    /** Widths are looked up to this many times the limit at the scale that all groups reach together. */
    private static final double LINE_REACH = 1.5;
    /** Wider than this many limits, a gap is ground between parts. */
    private static final double GAP_REACH = 3;

    private final SideMeasures side;
    private final Method method;
    private final double scale;
    private final double dust;
    private final double thin;
    private final double narrow;
    private final double widestGap;

    Needs(CheckContext context, SideMeasures side, double scale) {
        this.side = side;
        this.method = context.printed().method();
        this.scale = scale;
        this.dust = context.setting("width.dust");
        this.thin = context.setting("crowded-side.thin-share");
        this.narrow = context.setting("crowded-side.gap-share");
        this.widestGap = side.widestGap(method, context.setting("gap-too-narrow.two-ink-factor"));
    }

    MarkGroup group(Groups.Pile pile, boolean alone) {
        double type = type(pile.marks());
        double line = lines(pile, alone);
        double gap = gaps(pile, alone);
        double need = Math.max(type, Math.max(line, gap));
        Detail detail = need == 0 ? Detail.NONE : need == type ? Detail.LETTERING
                : need == line ? Detail.LINES : Detail.GAPS;
        return new MarkGroup(pile.marks(), pile.name(), pile.lettering(), Hull.of(pile.area()), need, detail);
    }

    private double type(List<String> marks) {
        double smallest = side.side().types().stream().filter(each -> marks.contains(each.mark()))
                .mapToDouble(PrintedType::xHeight).filter(x -> x > 0).min().orElse(Double.POSITIVE_INFINITY);
        return method.getTypeMin() / smallest;
    }

    private double lines(Groups.Pile pile, boolean alone) {
        double limit = method.getLineMin();
        double most = 0;
        for (String ink : side.inks()) {
            Geometry area = alone ? side.ink(ink, dust) : within(side.ink(ink, dust), pile.area());
            if (!area.isEmpty()) {
                // one group is not parted, so that it is enough to know whether it fails: by what other checks measure
                double shared = Math.max(limit, method.getGapMinReversed());
                WidthSpread spread = (alone && limit / scale <= shared ? side.lines(ink, dust, shared)
                        : WidthField.of(area, LINE_REACH * limit / scale)).spread();
                most = Math.max(most, limit / spread.width(thin * spread.total()));
            }
        }
        return most;
    }

    private double gaps(Groups.Pile pile, boolean alone) {
        double limit = method.getGapMin();
        if (alone && limit / scale <= widestGap) {
            WidthSpread known = side.gaps(dust, widestGap).spread();
            if (known.below(limit / scale) < narrow * thin * known.total()) {
                return 0;
            }
        }
        Geometry area = Polygons.withoutSlivers(alone ? side.printed(dust) : pile.area(), dust);
        Envelope box = area.getEnvelopeInternal();
        double reach = Math.min(GAP_REACH * limit / scale, Math.min(box.getWidth(), box.getHeight()) / 2);
        if (!(reach > 0)) {
            return 0;
        }
        WidthSpread spread = WidthField.gapsOf(area, reach).spread();
        return spread.known() < thin * spread.total() || spread.known() == 0 ? 0
                : limit / spread.width(narrow * spread.known());
    }

    /** Those polygons of an ink that a pile paints; piles never touch, so each polygon belongs to one. */
    private static Geometry within(Geometry ink, Geometry pile) {
        Envelope box = pile.getEnvelopeInternal();
        PointInZone zone = PointInZone.of(pile);
        List<Polygon> parts = new ArrayList<>();
        for (Polygon part : Polygons.parts(ink)) {
            if (box.intersects(part.getEnvelopeInternal())) {
                Point inner = part.getInteriorPoint();
                if (zone.contains(inner.getX(), inner.getY())) {
                    parts.add(part);
                }
            }
        }
        return Polygons.of(parts);
    }
}
