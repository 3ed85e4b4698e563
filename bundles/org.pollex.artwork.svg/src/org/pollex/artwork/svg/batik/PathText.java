/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;

/**
 * Path data read by the grammar of SVG 1.1 section 8.3, with arcs as cubic curves of at most 45 degrees. Conversion of
 * an arc from ends to centre follows SVG 1.1 appendix F.6; the control points at 4/3 tan(angle / 4) keep the curve
 * within 5e-6 of the radius. Reading stops at the first error and keeps what came before, as appendix F.2 asks.
 */
final class PathText {

    private final String text;
    private final Path2D.Double path = new Path2D.Double();
    private int at;
    private double x;
    private double y;
    private double startX;
    private double startY;
    private double controlX;
    private double controlY;
    private char previous = 'M';
    private boolean arcs;
    private boolean sound = true;

    private PathText(String text) {
        this.text = text;
    }

    static PathText of(String text) {
        PathText data = new PathText(text);
        try {
            data.read();
        } catch (NumberFormatException e) {
            data.sound = false;
        }
        return data;
    }

    /** The path in the units of the file. */
    Path2D.Double path() {
        return path;
    }

    /** Whether any command was an arc. */
    boolean arcs() {
        return arcs;
    }

    /** Whether all of the data could be read. */
    boolean sound() {
        return sound;
    }

    /** The path as data without arcs, absolute. */
    String written() {
        StringBuilder out = new StringBuilder(text.length() * 2);
        double[] c = new double[6];
        for (PathIterator it = path.getPathIterator(null); !it.isDone(); it.next()) {
            int kind = it.currentSegment(c);
            int numbers = switch (kind) {
                case PathIterator.SEG_MOVETO, PathIterator.SEG_LINETO -> 2;
                case PathIterator.SEG_QUADTO -> 4;
                case PathIterator.SEG_CUBICTO -> 6;
                default -> 0;
            };
            out.append("MLQCZ".charAt(kind));
            for (int i = 0; i < numbers; i++) {
                out.append(i == 0 ? "" : " ").append((float) c[i]);
            }
        }
        return out.toString();
    }

    private void read() {
        char command = 0;
        while (true) {
            skip();
            if (at >= text.length()) {
                return;
            }
            char c = text.charAt(at);
            if (Character.isLetter(c)) {
                command = c;
                at++;
                if (path.getCurrentPoint() == null && Character.toUpperCase(command) != 'M') {
                    throw new NumberFormatException("no start");
                }
            } else if (command == 0 || command == 'z' || command == 'Z') {
                throw new NumberFormatException("no command");
            }
            step(command);
            previous = Character.toUpperCase(command);
            if (command == 'M' || command == 'm') {
                command = command == 'M' ? 'L' : 'l';
            }
        }
    }

    private void step(char command) {
        boolean relative = Character.isLowerCase(command);
        double ox = relative ? x : 0;
        double oy = relative ? y : 0;
        switch (Character.toUpperCase(command)) {
            case 'M' -> {
                double nx = ox + number();
                double ny = oy + number();
                path.moveTo(nx, ny);
                startX = x = nx;
                startY = y = ny;
            }
            case 'L' -> line(ox + number(), oy + number());
            case 'H' -> line(ox + number(), y);
            case 'V' -> line(x, oy + number());
            case 'C' -> cubic(ox + number(), oy + number(), ox + number(), oy + number(), ox + number(),
                    oy + number());
            case 'S' -> {
                boolean smooth = previous == 'C' || previous == 'S';
                cubic(smooth ? 2 * x - controlX : x, smooth ? 2 * y - controlY : y, ox + number(), oy + number(),
                        ox + number(), oy + number());
            }
            case 'Q' -> quad(ox + number(), oy + number(), ox + number(), oy + number());
            case 'T' -> {
                boolean smooth = previous == 'Q' || previous == 'T';
                quad(smooth ? 2 * x - controlX : x, smooth ? 2 * y - controlY : y, ox + number(), oy + number());
            }
            case 'A' -> {
                arcs = true;
                arc(number(), number(), number(), flag(), flag(), ox + number(), oy + number());
            }
            case 'Z' -> {
                path.closePath();
                x = startX;
                y = startY;
            }
            default -> throw new NumberFormatException("unknown command");
        }
    }

    private void line(double nx, double ny) {
        reopen();
        path.lineTo(nx, ny);
        x = nx;
        y = ny;
    }

    private void quad(double cx, double cy, double nx, double ny) {
        reopen();
        path.quadTo(cx, cy, nx, ny);
        controlX = cx;
        controlY = cy;
        x = nx;
        y = ny;
    }

    private void cubic(double ax, double ay, double bx, double by, double nx, double ny) {
        reopen();
        path.curveTo(ax, ay, bx, by, nx, ny);
        controlX = bx;
        controlY = by;
        x = nx;
        y = ny;
    }

    /** After a closed subpath a new one begins at the same point. */
    private void reopen() {
        if (previous == 'Z') {
            path.moveTo(x, y);
        }
    }

    private void arc(double givenX, double givenY, double turn, boolean large, boolean sweep, double nx, double ny) {
        double rx = Math.abs(givenX);
        double ry = Math.abs(givenY);
        if (rx == 0 || ry == 0 || x == nx && y == ny) {
            line(nx, ny);
            return;
        }
        double phi = Math.toRadians(turn % 360);
        double cos = Math.cos(phi);
        double sin = Math.sin(phi);
        double hx = (x - nx) / 2;
        double hy = (y - ny) / 2;
        double px = cos * hx + sin * hy;
        double py = -sin * hx + cos * hy;
        double stretch = px * px / (rx * rx) + py * py / (ry * ry);
        if (stretch > 1) {
            rx *= Math.sqrt(stretch);
            ry *= Math.sqrt(stretch);
        }
        double a = rx * rx * py * py + ry * ry * px * px;
        double root = Math.sqrt(Math.max(0, (rx * rx * ry * ry - a) / a)) * (large == sweep ? -1 : 1);
        double qx = root * rx * py / ry;
        double qy = -root * ry * px / rx;
        double cx = cos * qx - sin * qy + (x + nx) / 2;
        double cy = sin * qx + cos * qy + (y + ny) / 2;
        double from = Math.atan2((py - qy) / ry, (px - qx) / rx);
        double sweepAngle = Math.atan2((-py - qy) / ry, (-px - qx) / rx) - from;
        if (sweep && sweepAngle < 0) {
            sweepAngle += 2 * Math.PI;
        } else if (!sweep && sweepAngle > 0) {
            sweepAngle -= 2 * Math.PI;
        }
        int pieces = (int) Math.max(1, Math.ceil(Math.abs(sweepAngle) / (Math.PI / 4) - 1e-9));
        double step = sweepAngle / pieces;
        double k = 4.0 / 3 * Math.tan(step / 4);
        for (int i = 0; i < pieces; i++) {
            double t0 = from + i * step;
            double t1 = t0 + step;
            double ux = Math.cos(t0) - k * Math.sin(t0);
            double uy = Math.sin(t0) + k * Math.cos(t0);
            double vx = Math.cos(t1) + k * Math.sin(t1);
            double vy = Math.sin(t1) - k * Math.cos(t1);
            boolean last = i == pieces - 1;
            double ex = last ? nx : cx + cos * rx * Math.cos(t1) - sin * ry * Math.sin(t1);
            double ey = last ? ny : cy + sin * rx * Math.cos(t1) + cos * ry * Math.sin(t1);
            cubic(cx + cos * rx * ux - sin * ry * uy, cy + sin * rx * ux + cos * ry * uy,
                    cx + cos * rx * vx - sin * ry * vy, cy + sin * rx * vx + cos * ry * vy, ex, ey);
            previous = 'A';
        }
    }

    private void skip() {
        while (at < text.length() && (text.charAt(at) <= ' ' || text.charAt(at) == ',')) {
            at++;
        }
    }

    private boolean flag() {
        skip();
        char c = at < text.length() ? text.charAt(at++) : 'x';
        if (c != '0' && c != '1') {
            throw new NumberFormatException("no flag");
        }
        return c == '1';
    }

    private double number() {
        skip();
        int from = at;
        if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+')) {
            at++;
        }
        digits();
        if (at < text.length() && text.charAt(at) == '.') {
            at++;
            digits();
        }
        if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            at++;
            if (at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '+')) {
                at++;
            }
            digits();
        }
        return Double.parseDouble(text.substring(from, at));
    }

    private void digits() {
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
    }
}
