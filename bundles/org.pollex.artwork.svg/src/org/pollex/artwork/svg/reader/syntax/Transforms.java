/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.syntax;

import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The {@code transform} attribute and the CSS property of that name (CSS Transforms 1): lists of functions of the
 * plane, with or without units.
 */
public final class Transforms {

    private Transforms() {
    }

    /**
     * The whole list as one transform; empty when it has an error, then the attribute counts for nothing.
     *
     * @param text      list, or {@code none}
     * @param width     what 100 % of a horizontal shift is
     * @param height    what 100 % of a vertical shift is
     * @param fontSize  font size in user units
     */
    public static Optional<AffineTransform> parse(String text, double width, double height, double fontSize) {
        AffineTransform all = new AffineTransform();
        Cursor c = new Cursor(text);
        c.spaces();
        if (text.strip().equals("none")) {
            return Optional.of(all);
        }
        while (!c.done()) {
            String name = c.name();
            c.spaces();
            if (name.isEmpty() || !c.take('(')) {
                return Optional.empty();
            }
            Optional<List<Length>> arguments = arguments(c.inBrackets());
            if (arguments.isEmpty() || text.charAt(c.at() - 1) != ')') {
                return Optional.empty();
            }
            AffineTransform one = function(name, arguments.get(), width, height, fontSize);
            if (one == null) {
                return Optional.empty();
            }
            all.concatenate(one);
            c.comma();
        }
        return Optional.of(all);
    }

    private static Optional<List<Length>> arguments(String text) {
        List<Length> list = new ArrayList<>();
        Cursor c = new Cursor(text);
        c.spaces();
        while (!c.done()) {
            if (!c.number() || !Double.isFinite(c.value())) {
                return Optional.empty();
            }
            double value = c.value();
            String unit = c.unit();
            Optional<Length> plain = Length.parse("1" + unit);
            if (plain.isPresent()) {
                list.add(new Length(value, plain.get().unit()));
            } else {
                double degrees = Angles.factor(unit);
                if (Double.isNaN(degrees)) {
                    return Optional.empty();
                }
                list.add(new Length(value * degrees, Length.Unit.NONE));
            }
            c.comma();
        }
        return Optional.of(list);
    }

    private static AffineTransform function(String name, List<Length> a, double width, double height, double size) {
        int n = a.size();
        return switch (name) {
            case "matrix" -> n == 6 ? new AffineTransform(v(a, 0), v(a, 1), v(a, 2), v(a, 3),
                    a.get(4).resolve(width, size), a.get(5).resolve(height, size)) : null;
            case "translate" -> n == 1 || n == 2 ? AffineTransform.getTranslateInstance(a.get(0).resolve(width, size),
                    n == 2 ? a.get(1).resolve(height, size) : 0) : null;
            case "translateX" -> n == 1 ? AffineTransform.getTranslateInstance(a.get(0).resolve(width, size), 0) : null;
            case "translateY" -> n == 1 ? AffineTransform.getTranslateInstance(0, a.get(0).resolve(height, size))
                    : null;
            case "scale" -> n == 1 || n == 2
                    ? AffineTransform.getScaleInstance(v(a, 0), n == 2 ? v(a, 1) : v(a, 0)) : null;
            case "scaleX" -> n == 1 ? AffineTransform.getScaleInstance(v(a, 0), 1) : null;
            case "scaleY" -> n == 1 ? AffineTransform.getScaleInstance(1, v(a, 0)) : null;
            case "rotate" -> rotate(a);
            case "skewX" -> n == 1 ? AffineTransform.getShearInstance(Math.tan(Math.toRadians(v(a, 0))), 0) : null;
            case "skewY" -> n == 1 ? AffineTransform.getShearInstance(0, Math.tan(Math.toRadians(v(a, 0)))) : null;
            case "skew" -> n == 1 || n == 2 ? AffineTransform.getShearInstance(Math.tan(Math.toRadians(v(a, 0))),
                    n == 2 ? Math.tan(Math.toRadians(v(a, 1))) : 0) : null;
            default -> null;
        };
    }

    private static AffineTransform rotate(List<Length> a) {
        if (a.size() != 1 && a.size() != 3) {
            return null;
        }
        AffineTransform turn = Angles.rotation(v(a, 0));
        if (a.size() == 3) {
            AffineTransform about = AffineTransform.getTranslateInstance(v(a, 1), v(a, 2));
            about.concatenate(turn);
            about.translate(-v(a, 1), -v(a, 2));
            return about;
        }
        return turn;
    }

    private static double v(List<Length> a, int i) {
        Length length = a.get(i);
        return length.unit() == Length.Unit.PERCENT ? length.value() / 100 : length.value();
    }
}
