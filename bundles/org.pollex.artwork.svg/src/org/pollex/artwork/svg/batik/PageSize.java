/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.pollex.artwork.svg.gate.SvgNode;

/**
 * Size of the page of an SVG. Widths in physical units are taken as they are, one user unit or px as 1/96 inch (CSS
 * Values and Units, section 6.2); what is missing or given in percent follows from the view box.
 *
 * @param width   mm
 * @param height  mm
 * @param sized   whether both sides follow from a physical unit
 */
record PageSize(double width, double height, boolean sized) {

    static final double MM_PER_PX = 25.4 / 96;

    private static final double FALLBACK = 100 * MM_PER_PX;
    private static final Pattern LENGTH = Pattern.compile("([+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:e[+-]?\\d+)?)\\s*([a-z%]*)");

    static PageSize of(SvgNode root) {
        double[] box = viewBox(root.attribute("viewBox"));
        Optional<Length> width = Length.of(root.attribute("width"));
        Optional<Length> height = Length.of(root.attribute("height"));
        boolean sized = (width.isPresent() || height.isPresent()) && width.map(Length::physical).orElse(true)
                && height.map(Length::physical).orElse(true);
        double w = width.map(Length::mm).orElse(-1.0);
        double h = height.map(Length::mm).orElse(-1.0);
        if (w < 0 && h < 0) {
            w = box.length == 0 ? FALLBACK : box[2] * MM_PER_PX;
            h = box.length == 0 ? FALLBACK : box[3] * MM_PER_PX;
        } else if (w < 0) {
            w = box.length == 0 ? h : h * box[2] / box[3];
        } else if (h < 0) {
            h = box.length == 0 ? w : w * box[3] / box[2];
        }
        return new PageSize(w, h, sized);
    }

    /** The four numbers of a view box, or none when it is missing or empty. */
    static double[] viewBox(String text) {
        String[] parts = text.strip().split("[\\s,]+");
        if (parts.length != 4) {
            return new double[0];
        }
        double[] box = new double[4];
        try {
            for (int i = 0; i < 4; i++) {
                box[i] = Double.parseDouble(parts[i]);
            }
        } catch (NumberFormatException e) {
            return new double[0];
        }
        return box[2] > 0 && box[3] > 0 ? box : new double[0];
    }

    /** A length with a unit that does not depend on anything around it. */
    private record Length(double mm, boolean physical) {

        static Optional<Length> of(String text) {
            Matcher m = LENGTH.matcher(text.strip().toLowerCase(Locale.ROOT));
            if (!m.matches()) {
                return Optional.empty();
            }
            double value = Double.parseDouble(m.group(1));
            if (!(value > 0)) {
                return Optional.empty();
            }
            return switch (m.group(2)) {
                case "", "px" -> Optional.of(new Length(value * MM_PER_PX, false));
                case "mm" -> Optional.of(new Length(value, true));
                case "cm" -> Optional.of(new Length(value * 10, true));
                case "q" -> Optional.of(new Length(value / 4, true));
                case "in" -> Optional.of(new Length(value * 25.4, true));
                case "pt" -> Optional.of(new Length(value * 25.4 / 72, true));
                case "pc" -> Optional.of(new Length(value * 25.4 / 6, true));
                default -> Optional.empty();
            };
        }
    }
}
