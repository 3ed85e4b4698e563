/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.pollex.colour.Srgb;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.ColourArea;

/**
 * The order of light and dark between fills of art, meant and printed, by geometry alone and without pixels: fills are
 * the parts that a band of 0.25 mm on each side does not eat; neighbours lie within 0.8 mm; the printed tone of a fill
 * is the share of it that ink covers.
 */
final class FillTones {

    private static final double INK = 90;
    private static final double STOCK = 18;

    /** A part of the art of one colour. */
    record Fill(double meant, Geometry area) {

        double printed(Geometry ink) {
            return STOCK + (INK - STOCK) * Polygons.intersection(area, ink).getArea() / area.getArea();
        }
    }

    private FillTones() {
    }

    static List<Fill> of(List<ColourArea> art) {
        List<Fill> fills = new ArrayList<>();
        for (ColourArea colour : art) {
            for (Polygon part : Polygons.parts(colour.area())) {
                Geometry inside = part.buffer(-0.25);
                if (inside.getArea() > 0.15) {
                    fills.add(new Fill(Srgb.lab(colour.rgb()).l(), inside));
                }
            }
        }
        return fills;
    }

    /** Polarity from -1 to 1, weighted by the size of the smaller neighbour; NaN when no fills keep a difference. */
    static double polarity(List<Fill> fills, Geometry ink) {
        double sum = 0;
        double most = 0;
        for (int i = 0; i < fills.size(); i++) {
            for (int k = i + 1; k < fills.size(); k++) {
                Fill a = fills.get(i);
                Fill b = fills.get(k);
                double meant = a.meant() - b.meant();
                if (Math.abs(meant) >= 5 && a.area().distance(b.area()) < 1.3) {
                    double weight = Math.sqrt(Math.min(a.area().getArea(), b.area().getArea()))
                            * Math.min(50, Math.abs(meant)) / 50;
                    double s = Math.max(-1, Math.min(1, (a.printed(ink) - b.printed(ink)) * Math.signum(meant) / 10));
                    sum += weight * s;
                    most += weight * Math.abs(s);
                }
            }
        }
        return most < 0.3 ? Double.NaN : sum / most;
    }
}
