/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.wear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.PixelGrid;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.FilmThickness;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;

/**
 * What share of each ink is worn off after hours of use. For each ink the wear field over its area is counted into 256
 * classes once, so any hour is a sum of 256 products. A model: the field, the rate and the even spread of the film are
 * assumptions; only the rate can be calibrated.
 */
public final class WearForecast {

    private static final int CLASSES = 256;
    /** Distance of samples over an area, mm. */
    private static final double STEP = 0.05;

    /** Where an ink lies equally thick; shares of the area of the ink in each class of the field. */
    private record Film(double thickness, double[] shares) {
    }

    private record Ink(String side, String id, double area, List<Film> films) {

        double thickness() {
            return films.stream().mapToDouble(each -> each.thickness * Arrays.stream(each.shares).sum()).sum();
        }
    }

    private final WearRates rates;
    private final List<Ink> inks;

    private WearForecast(List<Ink> inks, WearRates rates) {
        this.inks = inks;
        this.rates = rates;
    }

    /** The forecast for a design; the rates are those on its material. */
    public static WearForecast of(Printed printed, WearRates rates) {
        List<Ink> inks = new ArrayList<>();
        FilmThickness thickness = FilmThickness.of(printed);
        for (PrintedSide side : printed.sides()) {
            WearGrid grid = WearGrid.of(side.face());
            for (String id : side.inks()) {
                SortedMap<Double, Geometry> places = thickness.places(side, id, () -> side.ink(id));
                places.replaceAll((key, place) -> Polygons.intersection(place, side.face().area()));
                double area = places.values().stream().mapToDouble(Geometry::getArea).sum();
                List<Film> films = new ArrayList<>();
                places.forEach((film, place) -> {
                    if (!place.isEmpty()) {
                        films.add(new Film(film, shares(place, grid, place.getArea() / area)));
                    }
                });
                if (!films.isEmpty()) {
                    inks.add(new Ink(side.name(), id, area, films));
                }
            }
        }
        return new WearForecast(List.copyOf(inks), rates);
    }

    /** The same print at other rates, such as for another use; its areas and their field are not measured again. */
    public WearForecast with(WearRates other) {
        return new WearForecast(inks, other);
    }

    /** What each ink of each side has lost after some hours. */
    public List<RegionWear> after(double hours) {
        return inks.stream().map(ink -> new RegionWear(ink.side, ink.id, ink.area, ink.thickness(), lost(ink, hours)))
                .toList();
    }

    /** Share of everything printed that is worn off after some hours, by area; 0 when nothing is printed. */
    public double lost(double hours) {
        double area = inks.stream().mapToDouble(Ink::area).sum();
        return area == 0 ? 0 : inks.stream().mapToDouble(ink -> ink.area * lost(ink, hours)).sum() / area;
    }

    /** Hours until that share is worn off; infinite when it never is. */
    public double hoursUntil(double share) {
        double high = 1;
        while (lost(high) < share) {
            high *= 2;
            if (high > 1e6) {
                return Double.POSITIVE_INFINITY;
            }
        }
        double low = 0;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (lost(middle) < share) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private double lost(Ink ink, double hours) {
        double left = 0;
        for (Film film : ink.films) {
            for (int i = 0; i < CLASSES; i++) {
                if (film.shares[i] > 0) {
                    left += film.shares[i] * rates.left(film.thickness, (i + 0.5) / CLASSES, hours);
                }
            }
        }
        return Math.max(0, 1 - left);
    }

    /** Share of an area in each class of the field; together they are the whole. */
    private static double[] shares(Geometry area, WearGrid field, double whole) {
        PixelGrid pixels = PixelGrid.over(area.getEnvelopeInternal(), STEP);
        int[] inside = new int[pixels.size()];
        pixels.paint(area, 1, inside);
        double[] shares = new double[CLASSES];
        long count = 0;
        for (int i = 0; i < inside.length; i++) {
            if (inside[i] != 0) {
                shares[of(field.at(pixels.x() + (i % pixels.width() + 0.5) * STEP,
                        pixels.y() + (i / pixels.width() + 0.5) * STEP))]++;
                count++;
            }
        }
        if (count == 0) {
            Coordinate place = area.getInteriorPoint().getCoordinate();
            shares[of(field.at(place.x, place.y))] = whole;
            return shares;
        }
        for (int i = 0; i < CLASSES; i++) {
            shares[i] *= whole / count;
        }
        return shares;
    }

    private static int of(double field) {
        return Math.max(0, Math.min(CLASSES - 1, (int) (field * CLASSES)));
    }
}
