/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Hull;
import org.pollex.geometry.shape.PointInZone;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.PlaceKind;
import org.pollex.geometry.width.SmallPart;
import org.pollex.geometry.width.SmallParts;
import org.pollex.geometry.width.WidthField;
import org.pollex.geometry.width.WidthPlace;
import org.pollex.print.PrintedSide;
import org.pollex.print.PrintedType;

/**
 * The numbers that a designer watches on a side.
 *
 * @param line     thinnest line of ink, mm; empty when every line is wider than was looked for
 * @param gap      narrowest gap, mm; empty when every gap is wider than was looked for
 * @param type     smallest x-height, mm; empty without lettering
 * @param share    area of the hull of the print over the area of the safe zone; empty when nothing prints
 * @param speck    diameter of the smallest dot, mm; empty when nothing prints
 * @param pinhole  diameter of the smallest hole, mm; empty without holes
 * @param wear     share of the print that wears, weighted by how hard; empty when nothing prints
 */
public record Readout(OptionalDouble line, OptionalDouble gap, OptionalDouble type, OptionalDouble share,
        OptionalDouble speck, OptionalDouble pinhole, OptionalDouble wear) {

    /** Widths are looked for up to so many times the limit. */
    private static final double FARTHER = 3;

    /** Nothing is known. */
    public static final Readout NONE = new Readout(OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.empty());

    /** Of a side as printed. Takes as long as a check. */
    public static Readout of(PrintedSide side, Limits limits) {
        Geometry printed = side.printed();
        if (printed.isEmpty()) {
            return NONE;
        }
        double dust = limits.dust();
        OptionalDouble line = side.inks().stream().map(each -> Polygons.withoutSlivers(side.ink(each), dust))
                .filter(each -> !each.isEmpty()).map(each -> least(WidthField.of(each, limits.line() * FARTHER),
                        limits.line(), limits.tip(), dust))
                .filter(OptionalDouble::isPresent).mapToDouble(OptionalDouble::getAsDouble).min();
        OptionalDouble gap = least(WidthField.gapsOf(Polygons.withoutSlivers(printed, dust), limits.gap() * FARTHER),
                limits.gap(), limits.notch(), dust);
        OptionalDouble type = side.types().stream().mapToDouble(PrintedType::xHeight).min();
        double safe = side.face().safe().getArea();
        OptionalDouble share = safe > 0 ? OptionalDouble.of(Hull.of(printed).area() / safe) : OptionalDouble.empty();
        OptionalDouble speck = smallest(side, side.inks().stream().map(each -> Polygons.withoutSlivers(side.ink(each),
                dust)).flatMap(each -> SmallParts.of(each, Double.MAX_VALUE, 0).stream()));
        OptionalDouble pinhole = smallest(side, SmallParts.of(Polygons.withoutSlivers(printed, dust), 0,
                Double.MAX_VALUE).stream());
        double worn = Worn.of(printed, side.face().wearRisk(), side.face().area(), side.face().wear()).share();
        return new Readout(line, gap, type, share, speck, pinhole, OptionalDouble.of(worn));
    }

    /** Diameter of the disc with the area of the smallest that lies on the item. */
    private static OptionalDouble smallest(PrintedSide side, Stream<SmallPart> parts) {
        PointInZone item = PointInZone.of(side.face().area());
        return parts.filter(each -> item.contains(each.x(), each.y()))
                .mapToDouble(each -> Math.sqrt(each.area() * 4 / Math.PI)).min();
    }

    /**
     * The same for a mark that is moved and not scaled, which changes no width, dot, hole or letter of a side.
     *
     * @param before  of the side before it was moved
     */
    public Readout moved(Readout before) {
        return before.equals(NONE) ? this : new Readout(before.line, gap, before.type, share, before.speck,
                before.pinhole, wear);
    }

    /** Tips and notches run out to nothing: they count only where the method's own limit makes them long. */
    private static OptionalDouble least(WidthField field, double limit, double shortest, double dust) {
        DoubleStream between = field.places(limit * FARTHER).stream().filter(each -> !runsOut(each)
                && (each.width() > dust || each.length() > dust)).mapToDouble(WidthPlace::width);
        DoubleStream out = field.places(limit).stream().filter(each -> runsOut(each) && each.length() >= shortest)
                .mapToDouble(WidthPlace::width);
        return DoubleStream.concat(between, out).min();
    }

    private static boolean runsOut(WidthPlace place) {
        return place.kind() == PlaceKind.TIP || place.kind() == PlaceKind.NOTCH;
    }
}
