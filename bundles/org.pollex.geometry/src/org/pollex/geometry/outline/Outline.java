/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.outline;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.shape.Polygons;

/**
 * The edge of an item: one closed path of lines and arcs, kept exactly.
 *
 * <p>Answers area, perimeter and bounds without flattening, whether a point lies inside, and gives insets and
 * polygons. The path always runs clockwise on screen (the constructor turns it round if need be) and must not cross
 * itself, which is not checked. Millimetres, x to the right, y down; angles in degrees clockwise on screen.
 * Immutable.
 */
public final class Outline {

    /** How far a chord lies from its arc at most when nothing else is said, mm. */
    public static final double CHORD_ERROR = 0.002;

    /** How far apart two ends may lie and still meet, mm; rounding of arcs with radii of metres. */
    private static final double MEET = 1e-6;

    /** How much two directions may differ and still be tangent, degrees. */
    private static final double TANGENT = 1e-5;

    private final List<Segment> segments;

    private Outline(List<Segment> segments) {
        this.segments = segments;
    }

    /**
     * An outline of segments that follow each other and close.
     *
     * @throws OutlineException if two segments do not meet or the path encloses nothing
     */
    public static Outline of(List<? extends Segment> path) {
        if (path.isEmpty()) {
            throw new OutlineException("An outline needs at least one line or arc.");
        }
        double twice = 0;
        for (int i = 0; i < path.size(); i++) {
            Coordinate end = path.get(i).end();
            Coordinate next = path.get((i + 1) % path.size()).start();
            if (end.distance(next) > MEET) {
                throw new OutlineException(String.format(Locale.ROOT,
                        "Segment %d of the outline ends at (%.4f, %.4f), but the next begins at (%.4f, %.4f).",
                        i + 1, end.x, end.y, next.x, next.y));
            }
            twice += path.get(i).areaShare();
        }
        List<Segment> segments = new ArrayList<>(path);
        if (twice < 0) {
            Collections.reverse(segments);
            segments.replaceAll(Segment::reversed);
        }
        if (!(Math.abs(twice) > 0)) {
            throw new OutlineException("The outline encloses no area.");
        }
        return new Outline(List.copyOf(segments));
    }

    /** The segments, clockwise on screen. */
    public List<Segment> segments() {
        return segments;
    }

    /** The exact bounding box. */
    public Envelope bounds() {
        Envelope box = new Envelope();
        segments.forEach(segment -> segment.expand(box));
        return box;
    }

    /** The exact area, mm². */
    public double area() {
        return segments.stream().mapToDouble(Segment::areaShare).sum();
    }

    /** The exact perimeter, mm. */
    public double perimeter() {
        return segments.stream().mapToDouble(Segment::length).sum();
    }

    /** Whether each segment leaves in the direction in which the one before arrived. */
    public boolean isTangentContinuous() {
        for (int i = 0; i < segments.size(); i++) {
            if (Math.abs(turnAfter(i)) > TANGENT) {
                return false;
            }
        }
        return true;
    }

    /** Whether the outline bends one way only. */
    public boolean isConvex() {
        for (int i = 0; i < segments.size(); i++) {
            if (segments.get(i) instanceof ArcSegment arc && arc.sweep() < 0 || turnAfter(i) < -TANGENT) {
                return false;
            }
        }
        return true;
    }

    /** The turn between the end of a segment and the start of the next, degrees in (-180, 180]. */
    private double turnAfter(int i) {
        double turn = segments.get((i + 1) % segments.size()).startDirection() - segments.get(i).endDirection();
        return turn - 360 * Math.ceil((turn - 180) / 360);
    }

    /** Whether a point lies inside; exact but for rounding, points on the edge may be answered either way. */
    public boolean contains(double x, double y) {
        boolean inside = false;
        for (Segment segment : segments) {
            Coordinate a = segment.start();
            Coordinate b = segment.end();
            if (a.y > y != b.y > y && x < a.x + (y - a.y) / (b.y - a.y) * (b.x - a.x)) {
                inside = !inside;
            }
            if (segment instanceof ArcSegment arc && arc.capContains(x, y)) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** The outline as a polygon with a chord error of {@value #CHORD_ERROR} mm. */
    public Polygon flatten() {
        return flatten(CHORD_ERROR);
    }

    /**
     * The outline as a polygon whose corners lie on the outline.
     *
     * @param chordError how far a chord may lie from its arc, mm, above 0
     */
    public Polygon flatten(double chordError) {
        if (!(chordError > 0)) {
            throw new IllegalArgumentException("The chord error must be above 0 mm, not " + chordError + ".");
        }
        List<Coordinate> corners = new ArrayList<>();
        segments.forEach(segment -> segment.flattenInto(corners, chordError));
        corners.add(0, new Coordinate(corners.get(corners.size() - 1)));
        return Polygons.polygon(corners.toArray(new Coordinate[0]));
    }

    /**
     * The outline moved inwards everywhere by a distance; a negative distance moves it outwards.
     *
     * <p>Exact (arcs about the same centres) when the outline is convex, has no corners and no arc is used up.
     * Otherwise a polygon with a chord error of {@value #CHORD_ERROR} mm.
     *
     * @param distance mm
     * @throws OutlineException if nothing is left or the outline falls to pieces
     */
    public Outline inset(double distance) {
        if (distance == 0) {
            return this;
        }
        return Insets.inset(this, distance);
    }

    /** The outline moved, mm. */
    public Outline moved(double dx, double dy) {
        return new Outline(segments.stream().map(segment -> segment.moved(dx, dy)).toList());
    }

    /** The outline scaled about the origin by a factor above 0. */
    public Outline scaled(double factor) {
        if (!(factor > 0)) {
            throw new IllegalArgumentException("An outline can be scaled by a factor above 0 only, not " + factor);
        }
        return new Outline(segments.stream().map(segment -> segment.scaled(factor)).toList());
    }

    /** The outline moved so that the middle of its bounding box is the origin. */
    public Outline centred() {
        Coordinate middle = bounds().centre();
        return moved(-middle.x, -middle.y);
    }

    /** The path in the syntax of an SVG path's {@code d}, with arcs as arcs, millimetres to a tenth of a micrometre. */
    public String svgPath() {
        StringBuilder path = new StringBuilder();
        Coordinate start = segments.get(0).start();
        path.append('M').append(number(start.x)).append(' ').append(number(start.y));
        for (Segment segment : segments) {
            Coordinate end = segment.end();
            if (segment instanceof ArcSegment arc) {
                String radius = number(arc.radius());
                path.append('A').append(radius).append(' ').append(radius).append(" 0 ")
                        .append(Math.abs(arc.sweep()) > 180 ? '1' : '0').append(' ')
                        .append(arc.sweep() > 0 ? '1' : '0').append(' ');
            } else {
                path.append('L');
            }
            path.append(number(end.x)).append(' ').append(number(end.y));
        }
        return path.append('Z').toString();
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.4f", value);
        text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
        return text.equals("-0") ? "0" : text;
    }

    @Override
    public String toString() {
        return svgPath();
    }
}
