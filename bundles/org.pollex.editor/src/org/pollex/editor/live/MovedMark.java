/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.pollex.edit.Pose;
import org.pollex.geometry.shape.Hull;

/**
 * The mark that a gesture moves or scales, and the numbers of its side at every pose.
 *
 * @param areas  about its middle, at scale 1
 * @param hull   corners of its hull, about its middle, at scale 1
 * @param type   x-height of its smallest lettering at scale 1, mm; empty without
 */
public record MovedMark(List<Geometry> areas, List<Coordinate> hull, OptionalDouble type) {

    /**
     * The numbers of the side.
     *
     * @param places   thin places of the mark at that scale
     * @param measure  of the mark
     * @param rest     what the other marks add
     * @param worn     how much of the mark wears there
     * @param safe     area of the safe zone, mm²
     */
    public Readout at(Pose pose, List<ThinPlace> places, MarkMeasure measure, RestOfSide rest, Worn worn, double safe,
            Limits limits) {
        AffineTransformation placing = ZoneParts.placing(pose);
        OptionalDouble between = rest.areas().isEmpty() ? OptionalDouble.empty()
                : rest.gapTo(areas.stream().map(placing::transform).toList(), limits.gap() * limits.tolerance());
        OptionalDouble letters = type.isPresent() ? OptionalDouble.of(type.getAsDouble() * pose.scale()) : type;
        return new Readout(least(MarkMeasure.thinnest(places, false), rest.line()),
                least(MarkMeasure.thinnest(places, true), rest.gap(), between), least(letters, rest.type()),
                share(placing, rest, safe), least(measure.speck(pose.scale()), rest.speck()),
                least(measure.pinhole(pose.scale()), rest.pinhole()), OptionalDouble.of(rest.worn().and(worn).share()));
    }

    private OptionalDouble share(AffineTransformation placing, RestOfSide rest, double safe) {
        Coordinate[] corners = java.util.stream.Stream.concat(rest.hull().stream(), hull.stream()
                .map(each -> placing.transform(each, new Coordinate()))).toArray(Coordinate[]::new);
        return corners.length < 3 || safe <= 0 ? OptionalDouble.empty()
                : OptionalDouble.of(Hull.of(corners).area() / safe);
    }

    private static OptionalDouble least(OptionalDouble... values) {
        return java.util.Arrays.stream(values).filter(OptionalDouble::isPresent).flatMapToDouble(each ->
                DoubleStream.of(each.getAsDouble())).min();
    }
}
