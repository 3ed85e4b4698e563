/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.syntax;

import java.awt.geom.Path2D;

/**
 * The {@code d} attribute (SVG 2, chapter 9): all commands, numbers without separators, flags without separators. What
 * stands before an error counts, the rest is dropped, as the standard asks.
 *
 * @param path   path up to the end or the first error
 * @param error  position of the first error in the text, -1 when there is none
 */
public record PathData(Path2D.Double path, int error) {

    /** Reads path data. */
    public static PathData parse(String text) {
        return new Parser(text).run();
    }

    private static final class Parser {
        private final Cursor c;
        private final Path2D.Double path = new Path2D.Double(Path2D.WIND_NON_ZERO, 32);
        private final double[] n = new double[7];
        private double x;
        private double y;
        private double startX;
        private double startY;
        /** Last control point, for the smooth commands. */
        private double controlX;
        private double controlY;
        private boolean open;

        Parser(String text) {
            c = new Cursor(text);
        }

        PathData run() {
            c.spaces();
            char last = 0;
            while (!c.done()) {
                int start = c.at();
                char command = c.peek();
                if (Character.isLetter(command)) {
                    c.next();
                } else if (last != 0 && last != 'z') {
                    command = last == 'm' ? 'l' : last == 'M' ? 'L' : last;
                } else {
                    return new PathData(path, start);
                }
                if (path.getCurrentPoint() == null && command != 'm' && command != 'M' || !read(command)) {
                    return new PathData(path, start);
                }
                apply(command, last);
                last = command == 'Z' ? 'z' : command;
                if (last == 'z') {
                    c.spaces();
                } else if (c.comma() && !numberNext()) {
                    return new PathData(path, c.at());
                }
            }
            return new PathData(path, -1);
        }

        private boolean numberNext() {
            char p = c.peek();
            return p >= '0' && p <= '9' || p == '-' || p == '+' || p == '.';
        }

        private boolean read(char command) {
            int count = switch (command) {
                case 'M', 'm', 'L', 'l', 'T', 't' -> 2;
                case 'H', 'h', 'V', 'v' -> 1;
                case 'C', 'c' -> 6;
                case 'S', 's', 'Q', 'q' -> 4;
                case 'A', 'a' -> 7;
                case 'Z', 'z' -> 0;
                default -> -1;
            };
            boolean arc = command == 'A' || command == 'a';
            c.spaces();
            for (int i = 0; i < count; i++) {
                if (i > 0) {
                    c.comma();
                }
                if (!(arc && (i == 3 || i == 4) ? c.flag() : c.number()) || !Double.isFinite(c.value())) {
                    return false;
                }
                n[i] = c.value();
            }
            return count >= 0;
        }

        private void apply(char command, char last) {
            boolean relative = command >= 'a';
            double bx = relative ? x : 0;
            double by = relative ? y : 0;
            switch (Character.toLowerCase(command)) {
                case 'm' -> {
                    startX = bx + n[0];
                    startY = by + n[1];
                    path.moveTo(startX, startY);
                    open = true;
                    here(startX, startY);
                }
                case 'l' -> line(bx + n[0], by + n[1]);
                case 'h' -> line(bx + n[0], y);
                case 'v' -> line(x, by + n[0]);
                case 'c' -> cubic(bx + n[0], by + n[1], bx + n[2], by + n[3], bx + n[4], by + n[5]);
                case 's' -> {
                    boolean smooth = "CcSs".indexOf(last) >= 0;
                    cubic(smooth ? 2 * x - controlX : x, smooth ? 2 * y - controlY : y,
                            bx + n[0], by + n[1], bx + n[2], by + n[3]);
                }
                case 'q' -> quad(bx + n[0], by + n[1], bx + n[2], by + n[3]);
                case 't' -> {
                    boolean smooth = "QqTt".indexOf(last) >= 0;
                    quad(smooth ? 2 * x - controlX : x, smooth ? 2 * y - controlY : y, bx + n[0], by + n[1]);
                }
                case 'a' -> {
                    begin();
                    double ex = bx + n[5];
                    double ey = by + n[6];
                    Arcs.append(path, x, y, n[0], n[1], n[2], n[3] == 1, n[4] == 1, ex, ey);
                    here(ex, ey);
                }
                default -> {
                    if (open) {
                        path.closePath();
                        open = false;
                    }
                    here(startX, startY);
                }
            }
        }

        /** A command after a close starts a new subpath where the closed one started. */
        private void begin() {
            if (!open) {
                path.moveTo(x, y);
                open = true;
            }
        }

        private void line(double ex, double ey) {
            begin();
            path.lineTo(ex, ey);
            here(ex, ey);
        }

        private void quad(double cx, double cy, double ex, double ey) {
            begin();
            path.quadTo(cx, cy, ex, ey);
            here(ex, ey);
            controlX = cx;
            controlY = cy;
        }

        private void cubic(double ax, double ay, double cx, double cy, double ex, double ey) {
            begin();
            path.curveTo(ax, ay, cx, cy, ex, ey);
            here(ex, ey);
            controlX = cx;
            controlY = cy;
        }

        private void here(double hx, double hy) {
            x = controlX = hx;
            y = controlY = hy;
        }
    }
}
