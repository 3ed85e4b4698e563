/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.syntax;

import java.awt.geom.AffineTransform;
import java.util.OptionalDouble;

/** Angles with CSS units, in degrees. */
public final class Angles {

    private Angles() {
    }

    /** Degrees in the unit; NaN when it is none of an angle. */
    static double factor(String unit) {
        return switch (unit) {
            case "", "deg" -> 1;
            case "rad" -> 180 / Math.PI;
            case "grad" -> 0.9;
            case "turn" -> 360;
            default -> Double.NaN;
        };
    }

    /** The angle in degrees if the whole text is one. */
    public static OptionalDouble parse(String text) {
        Cursor c = new Cursor(text.strip());
        if (!c.number() || !Double.isFinite(c.value())) {
            return OptionalDouble.empty();
        }
        double value = c.value() * factor(c.unit());
        return c.done() && !Double.isNaN(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** A rotation clockwise on the screen; quarter turns are exact. */
    public static AffineTransform rotation(double degrees) {
        double turn = degrees % 360;
        if (turn % 90 == 0) {
            return AffineTransform.getQuadrantRotateInstance((int) (turn / 90));
        }
        return AffineTransform.getRotateInstance(Math.toRadians(turn));
    }
}
