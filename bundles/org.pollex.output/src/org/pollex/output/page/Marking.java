/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.page;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.io.ByteArrayOutputStream;
import java.util.Locale;

/**
 * Drawing operators of a page, as text. Coordinates have six decimals, so that a shape keeps a nanometre however it is
 * scaled.
 */
final class Marking {

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);

    Marking add(String operators) {
        bytes.writeBytes(operators.getBytes(StandardCharsets.ISO_8859_1));
        bytes.write('\n');
        return this;
    }

    Marking numbers(String operator, double... values) {
        StringBuilder line = new StringBuilder();
        for (double value : values) {
            line.append(number(value)).append(' ');
        }
        return add(line.append(operator).toString());
    }

    Marking colour(String operator, int rgb) {
        return numbers(operator, (rgb >> 16 & 255) / 255.0, (rgb >> 8 & 255) / 255.0, (rgb & 255) / 255.0);
    }

    Marking hex(byte[] codes, String operator) {
        StringBuilder line = new StringBuilder("<");
        for (byte code : codes) {
            line.append(String.format(Locale.ROOT, "%02x", code & 255));
        }
        return add(line.append("> ").append(operator).toString());
    }

    Marking path(Shape shape) {
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
            switch (it.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> numbers("m", x = c[0], y = c[1]);
                case PathIterator.SEG_LINETO -> numbers("l", x = c[0], y = c[1]);
                case PathIterator.SEG_QUADTO -> {
                    numbers("c", x + (c[0] - x) * 2 / 3, y + (c[1] - y) * 2 / 3, c[2] + (c[0] - c[2]) * 2 / 3,
                            c[3] + (c[1] - c[3]) * 2 / 3, c[2], c[3]);
                    x = c[2];
                    y = c[3];
                }
                case PathIterator.SEG_CUBICTO -> {
                    numbers("c", c);
                    x = c[4];
                    y = c[5];
                }
                default -> add("h");
            }
        }
        return this;
    }

    static String fill(Shape shape) {
        return shape.getPathIterator(null).getWindingRule() == Path2D.WIND_EVEN_ODD ? "f*" : "f";
    }

    byte[] bytes() {
        return bytes.toByteArray();
    }

    static String number(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("A page cannot hold the coordinate " + value + ".");
        }
        BigDecimal decimal = BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return decimal.signum() == 0 ? "0" : decimal.toPlainString();
    }
}
