/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.wear;

import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.pollex.print.item.ItemFace;

/**
 * A worn sample: on the way from the tip, which is the place of the outline that is worn most, to the middle of the
 * face, half of the ink is gone at a distance. There the depth worn off is the mean thickness of the film, so the rate
 * is {@code film / (hours * field * material * use)}, in closed form. Only the rate is found; the shape of the field
 * stays an assumption. The farther from the tip the place is, the more a wrong reading of it counts.
 *
 * @param away   from the tip to where half of the ink is gone, above 0, mm
 * @param hours  of use, above 0
 */
public record WornSample(double away, double hours) {

    /** How well such a place is read by eye, mm. */
    public static final double READING = 0.5;

    public WornSample {
        if (!(away > 0 && hours > 0 && Double.isFinite(away) && Double.isFinite(hours))) {
            throw new IllegalArgumentException("A worn sample has a distance from the tip and hours of use above 0.");
        }
    }

    /**
     * A distance in a photograph of a sample, in mm, by the width of the item in it. The camera looks straight down;
     * what a slant shortens is not known here.
     *
     * @param left   left edge of the item where it is widest, pixels
     * @param right  right edge there, pixels
     * @param width  width of the item, mm
     * @param from   one end of the distance, pixels
     * @param to     its other end, pixels
     * @throws IllegalArgumentException when the two edges are less than a pixel apart
     */
    public static double measured(Coordinate left, Coordinate right, double width, Coordinate from, Coordinate to) {
        double wide = left.distance(right);
        if (!(wide >= 1)) {
            throw new IllegalArgumentException("The two edges of the item are one place; mark them apart.");
        }
        return from.distance(to) / wide * width;
    }

    /** The place of the outline of a face that is worn most, mm. */
    public static Coordinate tip(ItemFace face) {
        Coordinate tip = null;
        double most = Double.NEGATIVE_INFINITY;
        for (Coordinate place : face.area().getExteriorRing().getCoordinates()) {
            double field = face.wear().at(place.x, place.y);
            if (field > most) {
                most = field;
                tip = place;
            }
        }
        return new Coordinate(tip);
    }

    /**
     * The wear field where half of the ink is gone.
     *
     * @throws IllegalArgumentException when that place is beyond the middle of the face, or not worn at all
     */
    public double field(ItemFace face) {
        return field(face, away);
    }

    private static double field(ItemFace face, double away) {
        Coordinate tip = tip(face);
        double whole = Math.hypot(tip.x, tip.y);
        if (!(away < whole)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT,
                    "A place %.1f mm from the tip is beyond the middle of the item; measure from the tip.", away));
        }
        double field = face.wear().at(tip.x * (1 - away / whole), tip.y * (1 - away / whole));
        if (!(field > 0)) {
            throw new IllegalArgumentException("By the model nothing is worn off at that place.");
        }
        return field;
    }

    /**
     * The rates that this sample shows.
     *
     * @param rates  those of its material and use
     * @param face   the face that is worn
     * @param film   thickness of its ink, above 0, micrometres
     * @throws IllegalArgumentException as {@link #field(ItemFace)} does, and for no film
     */
    public WearRates calibrated(WearRates rates, ItemFace face, double film) {
        return rates.calibrated(film, hours, field(face));
    }

    /** The rate over the one found, if the place lay half a millimetre nearer to the tip: at most 1. */
    public double nearer(ItemFace face) {
        return field(face) / field(face, Math.max(0, away - READING));
    }

    /** The rate over the one found, if the place lay half a millimetre farther from the tip: at least 1. */
    public double farther(ItemFace face) {
        return field(face) / field(face, away + READING);
    }
}
