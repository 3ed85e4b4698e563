/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Arcs against the circle or ellipse they are part of. */
class ArcsTest {

    /** Largest | distance from the centre - 1 | after a transform, over many places of all cubics. */
    private static double deviation(Path2D path, AffineTransform toUnit) {
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        double worst = 0;
        for (PathIterator it = path.getPathIterator(toUnit); !it.isDone(); it.next()) {
            int type = it.currentSegment(c);
            if (type == PathIterator.SEG_CUBICTO) {
                for (int i = 0; i <= 40; i++) {
                    double t = i / 40.0;
                    double s = 1 - t;
                    double px = s * s * s * x + 3 * s * s * t * c[0] + 3 * s * t * t * c[2] + t * t * t * c[4];
                    double py = s * s * s * y + 3 * s * s * t * c[1] + 3 * s * t * t * c[3] + t * t * t * c[5];
                    worst = Math.max(worst, Math.abs(Math.hypot(px, py) - 1));
                }
                x = c[4];
                y = c[5];
            } else if (type == PathIterator.SEG_MOVETO) {
                x = c[0];
                y = c[1];
            }
        }
        return worst;
    }

    @Test
    void twoHalfCirclesAreACircle() {
        Path2D path = PathData.parse("M-28 0A28 28 0 0 1 28 0A28 28 0 0 1 -28 0z").path();
        assertTrue(deviation(path, AffineTransform.getScaleInstance(1 / 28.0, 1 / 28.0)) < 4.3e-6);
        Path2D tooSmall = PathData.parse("M-28 0A1 1 0 0 1 28 0").path();
        assertTrue(deviation(tooSmall, AffineTransform.getScaleInstance(1 / 28.0, 1 / 28.0)) < 4.3e-6,
                "radii that are too small grow");
    }

    /** Centre and radii are chosen, end points follow; the arc must come back to that ellipse. */
    @Test
    void anyArcLiesOnItsEllipse() {
        Random random = new Random(11);
        for (int run = 0; run < 2000; run++) {
            double rx = Math.exp(random.nextGaussian());
            double ry = Math.exp(random.nextGaussian());
            double turn = random.nextInt(360);
            double from = random.nextDouble() * 2 * Math.PI;
            double span = (random.nextDouble() - 0.5) * 4 * Math.PI;
            span = Math.max(-6, Math.min(6, Math.abs(span) < 0.05 ? 1 : span));
            if (Math.abs(Math.abs(span) - Math.PI) < 1e-3) {
                continue;
            }
            AffineTransform unit = AffineTransform.getTranslateInstance(random.nextGaussian(), random.nextGaussian());
            unit.rotate(Math.toRadians(turn));
            unit.scale(rx, ry);
            Point2D a = unit.transform(new Point2D.Double(Math.cos(from), Math.sin(from)), null);
            Point2D b = unit.transform(new Point2D.Double(Math.cos(from + span), Math.sin(from + span)), null);
            Path2D.Double path = new Path2D.Double();
            path.moveTo(a.getX(), a.getY());
            Arcs.append(path, a.getX(), a.getY(), rx, ry, turn, Math.abs(span) > Math.PI, span > 0, b.getX(), b.getY());
            assertEquals(b, path.getCurrentPoint(), "the end point is kept to the bit");
            try {
                assertTrue(deviation(path, unit.createInverse()) < 5e-6, "run " + run);
            } catch (NoninvertibleTransformException e) {
                throw new AssertionError(e);
            }
        }
    }

    /** Area of a circle: pi r2 to 1e-5, and it closes exactly. */
    @Test
    void anEllipseHasItsArea() {
        Path2D.Double path = new Path2D.Double();
        Arcs.ellipse(path, 3, 4, 5, 2);
        double area = 0;
        double x = 0;
        double y = 0;
        double[] c = new double[6];
        for (PathIterator it = path.getPathIterator(null, 1e-7); !it.isDone(); it.next()) {
            int type = it.currentSegment(c);
            if (type == PathIterator.SEG_LINETO) {
                area += (x * c[1] - c[0] * y) / 2;
            }
            if (type != PathIterator.SEG_CLOSE) {
                x = c[0];
                y = c[1];
            }
        }
        assertEquals(Math.PI * 10, area, Math.PI * 10 * 1e-5);
        assertEquals(new Point2D.Double(8, 4), new Point2D.Double(x, y));
    }
}
