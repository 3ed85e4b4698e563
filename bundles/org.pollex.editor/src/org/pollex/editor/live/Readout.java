/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Hull;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.PlaceKind;
import org.pollex.geometry.width.WidthField;
import org.pollex.geometry.width.WidthPlace;
import org.pollex.print.PrintedSide;
import org.pollex.print.PrintedType;

/**
 * The four numbers that a designer watches on a side.
 *
 * @param line   thinnest line of ink, mm; empty when every line is wider than was looked for
 * @param gap    narrowest gap, mm; empty when every gap is wider than was looked for
 * @param type   smallest x-height, mm; empty without lettering
 * @param share  area of the hull of the print over the area of the safe zone; empty when nothing prints
 */
public record Readout(OptionalDouble line, OptionalDouble gap, OptionalDouble type, OptionalDouble share) {

    /** Widths are looked for up to so many times the limit. */
    private static final double FARTHER = 3;

    /** Nothing is known. */
    public static final Readout NONE = new Readout(OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.empty(), OptionalDouble.empty());

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
        return new Readout(line, gap, type, safe > 0 ? OptionalDouble.of(Hull.of(printed).area() / safe)
                : OptionalDouble.empty());
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

    /**
     * The same with one mark at another scale.
     *
     * @param thinLine  thinnest ink of that mark where it is too thin
     * @param thinGap   narrowest gap of that mark where it is too narrow
     * @param factor    new scale over the one that was printed, for lettering and share
     */
    public Readout with(OptionalDouble thinLine, OptionalDouble thinGap, double factor, boolean lettering,
            OptionalDouble hullShare) {
        OptionalDouble types = lettering && type.isPresent() ? OptionalDouble.of(type.getAsDouble() * factor) : type;
        return new Readout(thinLine.isPresent() || factor != 1 ? thinLine : line,
                thinGap.isPresent() || factor != 1 ? thinGap : gap, types, hullShare);
    }
}
