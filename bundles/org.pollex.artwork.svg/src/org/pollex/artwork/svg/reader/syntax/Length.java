/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.syntax;

import java.util.Locale;
import java.util.Optional;

/**
 * A number with a unit. CSS fixes the physical units to each other and to the pixel: 1 in = 96 px = 2.54 cm
 * (CSS Values and Units 4, section 6.2).
 *
 * @param value  finite number
 * @param unit   its unit
 */
public record Length(double value, Unit unit) {

    /** Units of a length. */
    public enum Unit {
        /** None: user units. */
        NONE(1), PX(1), MM(96 / 25.4), CM(96 / 2.54), Q(96 / 101.6), IN(96), PT(96 / 72.0), PC(16),
        /** Of the font size. */
        EM(0), REM(0),
        /** Of the x-height. */
        EX(0), CH(0),
        /** Of the view port. */
        PERCENT(0), VW(0), VH(0);

        private final double px;

        Unit(double px) {
            this.px = px;
        }

        /** Pixels of 1/96 inch in the unit; 0 when it depends on where it stands. */
        public double px() {
            return px;
        }

        /** Whether the unit is one of a ruler. The pixel is not: files made for a screen have it everywhere. */
        public boolean physical() {
            return switch (this) {
                case MM, CM, Q, IN, PT, PC -> true;
                default -> false;
            };
        }
    }

    /** No length. */
    public static final Length ZERO = new Length(0, Unit.NONE);

    /** All there is. */
    public static final Length FULL = new Length(100, Unit.PERCENT);

    /** The length if the whole text is one. */
    public static Optional<Length> parse(String text) {
        Cursor c = new Cursor(text);
        c.spaces();
        Optional<Length> length = next(c);
        c.spaces();
        return c.done() ? length : Optional.empty();
    }

    /** The length that stands at the cursor. */
    public static Optional<Length> next(Cursor c) {
        if (!c.number() || !Double.isFinite(c.value())) {
            return Optional.empty();
        }
        double value = c.value();
        Unit unit = unit(c.unit());
        return unit == null ? Optional.empty() : Optional.of(new Length(value, unit));
    }

    private static Unit unit(String name) {
        return switch (name.toLowerCase(Locale.ROOT)) {
            case "" -> Unit.NONE;
            case "%" -> Unit.PERCENT;
            case "px" -> Unit.PX;
            case "mm" -> Unit.MM;
            case "cm" -> Unit.CM;
            case "q" -> Unit.Q;
            case "in" -> Unit.IN;
            case "pt" -> Unit.PT;
            case "pc" -> Unit.PC;
            case "em" -> Unit.EM;
            case "rem" -> Unit.REM;
            case "ex" -> Unit.EX;
            case "ch" -> Unit.CH;
            case "vw" -> Unit.VW;
            case "vh" -> Unit.VH;
            default -> null;
        };
    }

    /**
     * The length in user units.
     *
     * @param full      what 100 % is
     * @param fontSize  font size in user units
     */
    public double resolve(double full, double fontSize) {
        return switch (unit) {
            case PERCENT, VW, VH -> value / 100 * full;
            case EM, REM -> value * fontSize;
            case EX, CH -> value * fontSize / 2;
            default -> value * unit.px();
        };
    }
}
