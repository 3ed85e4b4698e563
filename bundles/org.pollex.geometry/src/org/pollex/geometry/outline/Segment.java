/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.outline;

import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** One piece of an outline: a straight line or a circular arc, with a direction. Millimetres. */
public sealed interface Segment permits LineSegment, ArcSegment {

    /** Where the segment begins. */
    Coordinate start();

    /** Where the segment ends. */
    Coordinate end();

    /** Its exact length, mm. */
    double length();

    /** Direction of travel at its start, degrees clockwise on screen from x. */
    double startDirection();

    /** Direction of travel at its end, degrees clockwise on screen from x. */
    double endDirection();

    /**
     * Its share of the area of a closed path: half the integral of x dy - y dx along it (Green's theorem), mm².
     * The sum over a closed path is positive when the path runs clockwise on screen.
     */
    double areaShare();

    /** Grows a box by the exact extent of this segment. */
    void expand(Envelope box);

    /**
     * Appends corners of a polyline that follows the segment, its end included and its start not.
     *
     * @param chordError how far a chord may lie from the arc, mm
     */
    void flattenInto(List<Coordinate> corners, double chordError);

    /** The same segment moved, mm. */
    Segment moved(double dx, double dy);

    /** The same segment scaled about the origin. */
    Segment scaled(double factor);

    /** The same segment run the other way. */
    Segment reversed();
}
