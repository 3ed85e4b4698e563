/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks.swatch;

import java.util.OptionalDouble;
import org.pollex.editor.measure.Measure;
import org.pollex.editor.measure.MeasureException;
import org.pollex.editor.setting.LengthUnit;

/**
 * Lengths in a photograph as fields show and read them: in the unit of lengths once the scale is known, in pixels until
 * then. A number with {@code px} behind it is always pixels.
 *
 * @param perMm  pixels of the photograph for a mm of the material
 */
record PhotoLength(OptionalDouble perMm) {

    private static final String PX = "px";

    /** As a field shows it. */
    String show(double pixels) {
        return perMm.isPresent() ? LengthUnit.chosen().show(pixels / perMm.getAsDouble()) + " "
                + LengthUnit.chosen().label() : Measure.show(pixels) + " " + PX;
    }

    /**
     * What was typed, in pixels.
     *
     * @throws IllegalArgumentException with a sentence when it cannot be understood
     */
    double pixels(String text) {
        String typed = text.strip();
        try {
            if (typed.endsWith(PX)) {
                return Measure.read(typed.substring(0, typed.length() - PX.length()), Measure.Kind.NUMBER, 0);
            }
            if (perMm.isPresent()) {
                return mm(typed) * perMm.getAsDouble();
            }
            return Measure.read(typed, Measure.Kind.NUMBER, 0);
        } catch (MeasureException e) {
            throw new IllegalArgumentException(perMm.isPresent() ? e.getMessage()
                    : "Write pixels such as 120 px; lengths can be written once the width is known.", e);
        }
    }

    /** A length that was typed, mm. */
    static double mm(String text) throws MeasureException {
        return Measure.read(text, Measure.Kind.LENGTH, 0, LengthUnit.chosen().millimetres());
    }

    /**
     * A length above 0, mm; empty while nothing is typed.
     *
     * @throws IllegalArgumentException with a sentence when it is none
     */
    static OptionalDouble above(String text) {
        if (text.isBlank()) {
            return OptionalDouble.empty();
        }
        try {
            double mm = mm(text);
            if (!(mm > 0)) {
                throw new IllegalArgumentException("A length above 0 is needed, such as 40 mm.");
            }
            return OptionalDouble.of(mm);
        } catch (MeasureException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    /** A length as a field shows it. */
    static String shown(double mm) {
        return LengthUnit.chosen().show(mm) + " " + LengthUnit.chosen().label();
    }
}
