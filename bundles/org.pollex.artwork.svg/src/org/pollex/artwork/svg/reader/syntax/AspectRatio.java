/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.syntax;

import java.awt.geom.AffineTransform;

/**
 * How a view box is fitted into a view port: {@code preserveAspectRatio}.
 *
 * @param stretch  whether both directions scale on their own ({@code none})
 * @param alignX   share of the free width left of the box: 0, 0.5 or 1
 * @param alignY   share of the free height above the box
 * @param slice    whether the box covers the port instead of fitting into it
 */
public record AspectRatio(boolean stretch, double alignX, double alignY, boolean slice) {

    /** What holds when nothing is said: in the middle, whole. */
    public static final AspectRatio USUAL = new AspectRatio(false, 0.5, 0.5, false);

    /** Reads the attribute; anything unknown is the usual. */
    public static AspectRatio parse(String text) {
        String[] words = text.strip().split("\\s+");
        int first = words[0].equals("defer") ? 1 : 0;
        if (first >= words.length) {
            return USUAL;
        }
        String align = words[first];
        boolean slice = words.length > first + 1 && words[first + 1].equals("slice");
        if (align.equals("none")) {
            return new AspectRatio(true, 0, 0, false);
        }
        if (align.length() != 8) {
            return USUAL;
        }
        double x = part(align.substring(0, 4), 'x');
        double y = part(align.substring(4), 'Y');
        return x < 0 || y < 0 ? USUAL : new AspectRatio(false, x, y, slice);
    }

    private static double part(String word, char axis) {
        if (word.charAt(0) != axis) {
            return -1;
        }
        return switch (word.substring(1)) {
            case "Min" -> 0;
            case "Mid" -> 0.5;
            case "Max" -> 1;
            default -> -1;
        };
    }

    /** Takes the view box to a port with a corner at (x, y). */
    public AffineTransform fit(ViewBox box, double x, double y, double width, double height) {
        double sx = width / box.width();
        double sy = height / box.height();
        if (!stretch) {
            sx = sy = slice ? Math.max(sx, sy) : Math.min(sx, sy);
        }
        return new AffineTransform(sx, 0, 0, sy,
                x - box.x() * sx + alignX(width - box.width() * sx),
                y - box.y() * sy + alignY(height - box.height() * sy));
    }

    private double alignX(double free) {
        return stretch ? 0 : alignX * free;
    }

    private double alignY(double free) {
        return stretch ? 0 : alignY * free;
    }
}
