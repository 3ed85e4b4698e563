/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;

import org.locationtech.jts.geom.Envelope;

/**
 * Makes the outline of a rounded triangle with its tip downward: three round corners joined by three sides that are
 * straight or bow outwards, all tangent to each other, in a bounding box of exactly the asked width and height.
 *
 * <p>The centre of the tip's circle lies on the middle line of the bounding box; the two upper circles are placed so
 * that the outline just touches the box on the left, on the right and at the top. A bulge is how far a side bows
 * out beyond the straight line that would touch both its corner circles; the side's arc touches both circles from
 * inside. With L the length of that straight line between its touching points and b the bulge, the arc's radius is
 * R = r1 + (A² + b²) / (2 b), A = (L + 2 b (r2 - r1) / L) / 2, which follows from Pythagoras in the two triangles
 * between the arc's centre, the corner centres and the foot of the normal through the arc's middle.
 */
public final class RoundedTriangle {

    /** A bulge below this is straight: the arc's radius would be tens of metres for a bow nobody can measure, mm. */
    static final double STRAIGHT = 0.001;

    private RoundedTriangle() {
    }

    /**
     * What a rounded triangle is made from, all in mm.
     *
     * @param width          of the bounding box, above 0
     * @param height         of the bounding box, above 0
     * @param topLeftRadius  radius of the upper left corner, above 0
     * @param topRightRadius radius of the upper right corner, above 0
     * @param tipRadius      radius of the tip, above 0
     * @param bulgeTop       how far the top side bows out, 0 or more
     * @param bulgeLeft      how far the left side bows out, 0 or more
     * @param bulgeRight     how far the right side bows out, 0 or more
     */
    public record Dimensions(double width, double height, double topLeftRadius, double topRightRadius,
            double tipRadius, double bulgeTop, double bulgeLeft, double bulgeRight) {

        /** Dimensions that are the same on the left and on the right. */
        public static Dimensions symmetric(double width, double height, double topRadius, double tipRadius,
                double bulgeTop, double bulgeSides) {
            return new Dimensions(width, height, topRadius, topRadius, tipRadius, bulgeTop, bulgeSides, bulgeSides);
        }
    }

    /**
     * The outline, centred on the origin, tip at the largest y.
     *
     * @throws OutlineException if no such outline exists, with the reason
     */
    public static Outline outline(Dimensions d) {
        check(d);
        double halfWidth = d.width / 2;
        double halfHeight = d.height / 2;
        double top = d.bulgeTop < STRAIGHT ? 0 : d.bulgeTop;
        Corner tip = new Corner("tip", 0, halfHeight - d.tipRadius, d.tipRadius);
        double leftY = top + d.topLeftRadius - halfHeight;
        double rightY = top + d.topRightRadius - halfHeight;
        double leftX = solve(d.topLeftRadius - halfWidth, "left", d.width, x -> halfWidth
                + TriangleSide.between(tip, new Corner("upper left corner", x, leftY, d.topLeftRadius),
                        d.bulgeLeft, "left").leftmost());
        // The right side is the left side of the mirrored triangle.
        double rightX = -solve(d.topRightRadius - halfWidth, "right", d.width, x -> halfWidth
                + TriangleSide.between(tip, new Corner("upper right corner", x, rightY, d.topRightRadius),
                        d.bulgeRight, "right").leftmost());
        Corner left = new Corner("upper left corner", leftX, leftY, d.topLeftRadius);
        Corner right = new Corner("upper right corner", rightX, rightY, d.topRightRadius);
        if (left.x() >= right.x()) {
            throw new OutlineException(String.format(Locale.ROOT,
                    "The two upper corners (radii %s and %s mm) do not fit side by side into a width of %s mm.",
                    text(d.topLeftRadius), text(d.topRightRadius), text(d.width)));
        }
        TriangleSide topSide = TriangleSide.between(left, right, d.bulgeTop, "top");
        TriangleSide rightSide = TriangleSide.between(right, tip, d.bulgeRight, "right");
        TriangleSide leftSide = TriangleSide.between(tip, left, d.bulgeLeft, "left");
        List<Segment> path = new ArrayList<>();
        double turned = join(path, leftSide, left, topSide) + join(path, topSide, right, rightSide)
                + join(path, rightSide, tip, leftSide);
        if (Math.abs(turned - 360) > 1e-6) {
            throw new OutlineException("The three sides do not close to a triangle; the radii or bulges are too large "
                    + "for the width and height.");
        }
        Outline outline = Outline.of(path);
        checkBox(outline.bounds(), d);
        return outline;
    }

    private static void check(Dimensions d) {
        Outlines.positive("width", d.width);
        Outlines.positive("height", d.height);
        Outlines.positive("upper left corner's radius", d.topLeftRadius);
        Outlines.positive("upper right corner's radius", d.topRightRadius);
        Outlines.positive("tip's radius", d.tipRadius);
        notNegative("top", d.bulgeTop);
        notNegative("left", d.bulgeLeft);
        notNegative("right", d.bulgeRight);
        double smaller = Math.min(d.width, d.height);
        fits("upper left corner", d.topLeftRadius, smaller);
        fits("upper right corner", d.topRightRadius, smaller);
        fits("tip", d.tipRadius, smaller);
        double upper = Math.max(d.topLeftRadius, d.topRightRadius);
        double top = d.bulgeTop < STRAIGHT ? 0 : d.bulgeTop;
        if (top + upper >= d.height - d.tipRadius) {
            throw new OutlineException(String.format(Locale.ROOT,
                    "The upper corners (radius %s mm, with %s mm of bulge above) reach below the centre of the tip "
                            + "(radius %s mm) in a height of %s mm.",
                    text(upper), text(top), text(d.tipRadius), text(d.height)));
        }
    }

    private static void notNegative(String side, double bulge) {
        if (!(bulge >= 0) || !Double.isFinite(bulge)) {
            throw new OutlineException("The bulge of the " + side + " side must be 0 mm or more, but is " + bulge
                    + ": hollow sides are not made by this outline.");
        }
    }

    private static void fits(String corner, double radius, double smaller) {
        if (2 * radius > smaller) {
            throw new OutlineException(String.format(Locale.ROOT,
                    "The %s's radius of %s mm is too large: its circle is wider than the item's shorter measure of "
                            + "%s mm.", corner, text(radius), text(smaller)));
        }
    }

    /** Where the corner's centre must be for its side to touch the box: as far out as it can be, or further in. */
    private static double solve(double outermost, String side, double width, DoubleUnaryOperator beyond) {
        if (beyond.applyAsDouble(outermost) >= 0) {
            return outermost;
        }
        double out = outermost;
        double in = 0;
        if (beyond.applyAsDouble(in) < 0) {
            throw new OutlineException("The bulge of the " + side + " side is too large: the side bows out of the "
                    + "width of " + text(width) + " mm even with its corner in the middle.");
        }
        for (int i = 0; i < 200 && in - out > Math.ulp(width); i++) {
            double middle = (out + in) / 2;
            if (beyond.applyAsDouble(middle) < 0) {
                out = middle;
            } else {
                in = middle;
            }
        }
        return in;
    }

    /** Adds the arc of a corner and the side that follows it; returns the degrees turned. */
    private static double join(List<Segment> path, TriangleSide before, Corner corner, TriangleSide after) {
        double sweep = after.startNormal() - before.endNormal();
        sweep -= 360 * Math.floor((sweep + 1e-9) / 360);
        if (sweep > 180 || sweep < 1e-6) {
            throw new OutlineException(String.format(Locale.ROOT,
                    "The sides that meet at the %s leave no room for its radius of %s mm: their bulges are too large "
                            + "or the triangle is too flat.", corner.name(), text(corner.radius())));
        }
        path.add(new ArcSegment(corner.x(), corner.y(), corner.radius(), before.endNormal(), sweep));
        path.add(after.segment());
        return sweep + after.turned();
    }

    private static void checkBox(Envelope box, Dimensions d) {
        double off = Math.max(Math.max(Math.abs(box.getMinX() + d.width / 2), Math.abs(box.getMaxX() - d.width / 2)),
                Math.max(Math.abs(box.getMinY() + d.height / 2), Math.abs(box.getMaxY() - d.height / 2)));
        if (off > 1e-7) {
            throw new OutlineException(String.format(Locale.ROOT,
                    "With these radii and bulges the outline is %.4f x %.4f mm instead of %s x %s mm: one side or "
                            + "corner reaches past its own edge of the box.",
                    box.getWidth(), box.getHeight(), text(d.width), text(d.height)));
        }
    }

    static String text(double value) {
        return String.format(Locale.ROOT, "%.3f", value).replaceAll("0+$", "").replaceAll("\\.$", "");
    }

    /** A corner circle. */
    record Corner(String name, double x, double y, double radius) {
    }
}
