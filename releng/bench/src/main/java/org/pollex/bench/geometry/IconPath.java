/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.bench.geometry;

import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the data of an SVG path into a Java path: all commands, absolute and relative. Only as good as a benchmark
 * needs: no errors are reported, and a path that breaks off ends where it does.
 */
final class IconPath {

    private static final Pattern TOKEN = Pattern.compile("[A-Za-z]|[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?");

    private final String data;
    private final Matcher matcher;
    private final Path2D path;
    private int at;
    private double x;
    private double y;
    private double startX;
    private double startY;
    /** The last control point, for smooth curves. */
    private double controlX;
    private double controlY;

    private IconPath(String data, boolean evenOdd) {
        this.data = data;
        this.matcher = TOKEN.matcher(data);
        this.path = new Path2D.Double(evenOdd ? Path2D.WIND_EVEN_ODD : Path2D.WIND_NON_ZERO);
    }

    static Path2D parse(String data, boolean evenOdd) {
        IconPath reader = new IconPath(data, evenOdd);
        reader.read();
        return reader.path;
    }

    private void read() {
        char command = 'M';
        while (matcher.find(at)) {
            if (Character.isLetter(data.charAt(matcher.start()))) {
                command = data.charAt(matcher.start());
                at = matcher.end();
                if (command == 'Z' || command == 'z') {
                    path.closePath();
                    x = startX;
                    y = startY;
                    continue;
                }
            }
            draw(command);
            if (command == 'M' || command == 'm') {
                command = command == 'M' ? 'L' : 'l';
            }
        }
    }

    private double number() {
        if (!matcher.find(at)) {
            at = data.length();
            return 0;
        }
        at = matcher.end();
        return Double.parseDouble(matcher.group());
    }

    /** A flag of an arc is one digit, even when the next number follows without a space. */
    private boolean flag() {
        while (at < data.length() && data.charAt(at) != '0' && data.charAt(at) != '1') {
            at++;
        }
        return at < data.length() && data.charAt(at++) == '1';
    }

    private void draw(char command) {
        boolean relative = Character.isLowerCase(command);
        double ox = relative ? x : 0;
        double oy = relative ? y : 0;
        double beforeX = x;
        double beforeY = y;
        double mirrorX = 2 * x - controlX;
        double mirrorY = 2 * y - controlY;
        boolean curve = false;
        switch (Character.toUpperCase(command)) {
            case 'M' -> {
                to(ox + number(), oy + number());
                startX = x;
                startY = y;
                path.moveTo(x, y);
            }
            case 'L' -> {
                to(ox + number(), oy + number());
                path.lineTo(x, y);
            }
            case 'H' -> {
                to(ox + number(), y);
                path.lineTo(x, y);
            }
            case 'V' -> {
                to(x, oy + number());
                path.lineTo(x, y);
            }
            case 'C', 'S' -> {
                boolean smooth = Character.toUpperCase(command) == 'S';
                double ax = smooth ? mirrorX : ox + number();
                double ay = smooth ? mirrorY : oy + number();
                controlX = ox + number();
                controlY = oy + number();
                to(ox + number(), oy + number());
                path.curveTo(ax, ay, controlX, controlY, x, y);
                curve = true;
            }
            case 'Q', 'T' -> {
                boolean smooth = Character.toUpperCase(command) == 'T';
                controlX = smooth ? mirrorX : ox + number();
                controlY = smooth ? mirrorY : oy + number();
                to(ox + number(), oy + number());
                path.quadTo(controlX, controlY, x, y);
                curve = true;
            }
            case 'A' -> {
                double rx = number();
                double ry = number();
                double turn = number();
                boolean large = flag();
                boolean sweep = flag();
                to(ox + number(), oy + number());
                arc(beforeX, beforeY, Math.abs(rx), Math.abs(ry), Math.toRadians(turn), large, sweep);
            }
            default -> at = data.length();
        }
        if (!curve) {
            controlX = x;
            controlY = y;
        }
    }

    private void to(double nextX, double nextY) {
        x = nextX;
        y = nextY;
    }

    /** From end points to centre, as the SVG specification's appendix on implementation says. */
    private void arc(double fromX, double fromY, double rx, double ry, double turn, boolean large, boolean sweep) {
        if (rx == 0 || ry == 0 || fromX == x && fromY == y) {
            path.lineTo(x, y);
            return;
        }
        AffineTransform frame = new AffineTransform();
        frame.rotate(turn);
        frame.scale(rx, ry);
        Point2D a = back(frame, fromX, fromY);
        Point2D b = back(frame, x, y);
        double half = a.distance(b) / 2;
        double size = Math.max(1, half);
        double off = Math.sqrt(Math.max(0, size * size - half * half)) * (large == sweep ? -1 : 1);
        double dx = (b.getX() - a.getX()) / (2 * half);
        double dy = (b.getY() - a.getY()) / (2 * half);
        double cx = (a.getX() + b.getX()) / 2 - off * dy;
        double cy = (a.getY() + b.getY()) / 2 + off * dx;
        double start = Math.toDegrees(Math.atan2(a.getY() - cy, a.getX() - cx));
        double extent = Math.toDegrees(Math.atan2(b.getY() - cy, b.getX() - cx)) - start;
        if (sweep && extent < 0) {
            extent += 360;
        } else if (!sweep && extent > 0) {
            extent -= 360;
        }
        Arc2D arc = new Arc2D.Double(cx - size, cy - size, 2 * size, 2 * size, -start, -extent, Arc2D.OPEN);
        path.append(arc.getPathIterator(frame), true);
    }

    private static Point2D back(AffineTransform frame, double px, double py) {
        try {
            return frame.inverseTransform(new Point2D.Double(px, py), null);
        } catch (java.awt.geom.NoninvertibleTransformException e) {
            throw new IllegalStateException(e);
        }
    }
}
