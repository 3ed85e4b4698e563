/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.placement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.pollex.geometry.Shapes;
import org.pollex.geometry.outline.Outline;
import org.pollex.geometry.outline.RoundedTriangle;
import org.pollex.geometry.shape.Hull;
import org.pollex.geometry.shape.PointInZone;
import org.pollex.geometry.shape.Polygons;

/** Random placements against searches that share no code with the ones tested, and against JTS's own predicates. */
class RandomPlacementTest {

    private static Geometry randomArt(Random random) {
        int n = 3 + random.nextInt(40);
        Coordinate[] points = new Coordinate[n];
        for (int i = 0; i < n; i++) {
            points[i] = new Coordinate(5 + 3 * random.nextGaussian(), -4 + 2 * random.nextGaussian());
        }
        return Hull.of(points).polygon();
    }

    @Test
    void theLinearProgramAgreesWithANestedSearch() {
        Random random = new Random(1);
        for (int i = 0; i < 60; i++) {
            Hull zone = Hull.of(randomArt(random));
            Hull art = Hull.of(randomArt(random));
            Fit fit = LargestPlacement.in(zone.polygon()).at(art, 0);
            double searched = nested(zone, art);
            assertEquals(searched, fit.scale(), 1e-6 * searched);
            assertTrue(fit.scale() >= searched * (1 - 1e-9), "the program is not below the search");
            inside(zone.polygon(), art, fit);
        }
    }

    /** The scale is a concave function of the centre, so golden section within golden section finds its maximum. */
    private static double nested(Hull zone, Hull art) {
        Coordinate c = art.centroid();
        Hull about = art.moved(-c.x, -c.y);
        Envelope box = zone.polygon().getEnvelopeInternal();
        return golden(box.getMinX(), box.getMaxX(),
                x -> golden(box.getMinY(), box.getMaxY(), y -> scaleAt(zone, about, x, y)));
    }

    private static double golden(double from, double to, java.util.function.DoubleUnaryOperator f) {
        double a = from;
        double b = to;
        double g = (Math.sqrt(5) - 1) / 2;
        for (int i = 0; i < 60; i++) {
            double c = b - g * (b - a);
            double d = a + g * (b - a);
            if (f.applyAsDouble(c) >= f.applyAsDouble(d)) {
                b = d;
            } else {
                a = c;
            }
        }
        return f.applyAsDouble((a + b) / 2);
    }

    private static double scaleAt(Hull zone, Hull art, double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < zone.size(); i++) {
            int j = (i + 1) % zone.size();
            double nx = zone.y(j) - zone.y(i);
            double ny = zone.x(i) - zone.x(j);
            double room = nx * (zone.x(i) - x) + ny * (zone.y(i) - y);
            least = Math.min(least, room / art.support(nx, ny));
        }
        return least;
    }

    private static void inside(Geometry zone, Hull art, Fit fit) {
        Geometry placed = art.placed(fit.scale() * (1 - 1e-9), fit.turn(), fit.dx(), fit.dy()).polygon();
        // Shrinking was about the art's origin; bring the piece back by what that moved its middle.
        Coordinate a = art.centroid();
        double turn = Math.toRadians(fit.turn());
        double slip = fit.scale() * 1e-9;
        Geometry middled = org.locationtech.jts.geom.util.AffineTransformation
                .translationInstance(slip * (Math.cos(turn) * a.x - Math.sin(turn) * a.y),
                        slip * (Math.sin(turn) * a.x + Math.cos(turn) * a.y)).transform(placed);
        assertTrue(zone.covers(middled), "placed art leaves the zone");
        assertTrue(PointInZone.of(zone).containsHull(art.placed(fit.scale(), fit.turn(), fit.dx(), fit.dy()), 1e-8));
        for (Contact contact : fit.contacts()) {
            Geometry point = zone.getFactory().createPoint(new Coordinate(contact.x(), contact.y()));
            Geometry hull = art.placed(fit.scale(), fit.turn(), fit.dx(), fit.dy()).polygon();
            assertTrue(hull.distance(point) < 1e-4 && zone.getBoundary().distance(point) < 1e-6, contact::toString);
        }
        assertTrue(fit.contacts().size() >= 2, "nothing holds the art: " + fit);
    }

    private static Geometry hollowZone(Random random) {
        Geometry zone = Shapes.blob(random, 10, 60 + random.nextInt(300), 0.3);
        for (int k = random.nextInt(4); k >= 0; k--) {
            zone = Polygons.difference(zone, Shapes.disc(8 * random.nextGaussian(), 8 * random.nextGaussian(),
                    1 + 2 * random.nextDouble(), 32 + random.nextInt(100)));
        }
        return zone;
    }

    @Test
    void noDenseSearchBeatsTheProof() {
        Random random = new Random(2);
        for (int i = 0; i < 25; i++) {
            Geometry zone = hollowZone(random);
            Hull art = Hull.of(randomArt(random));
            double turn = 360 * random.nextDouble() - 180;
            Fit fit = LargestPlacement.in(zone).at(art, turn);
            assertTrue(fit.certified());
            assertTrue(fit.upperBound() >= fit.scale() && fit.upperBound() <= fit.scale() * 1.0011);
            inside(zone, art, fit);
            PreparedGeometry prepared = PreparedGeometryFactory.prepare(zone);
            Envelope box = zone.getEnvelopeInternal();
            Coordinate c = art.centroid();
            Hull about = art.moved(-c.x, -c.y);
            double bound = fit.upperBound() * (1 + 1e-9);
            for (int k = 0; k < 900; k++) {
                double x = box.getMinX() + box.getWidth() * (k % 30 + 0.5) / 30;
                double y = box.getMinY() + box.getHeight() * (k / 30 + 0.5) / 30;
                assertTrue(!prepared.covers(about.placed(bound, turn, x, y).polygon()), "a larger copy fits");
            }
        }
    }

    @Test
    void theBestTurnIsNotBeatenByAnyTurnTried() {
        Random random = new Random(3);
        Outline outline = RoundedTriangle.outline(RoundedTriangle.Dimensions.symmetric(26, 31, 5, 2, 1.2, 1.5));
        Geometry safe = outline.inset(1).flatten();
        Geometry hollow = Polygons.difference(safe, Shapes.disc(0, 15.5, 9, 256));
        for (int i = 0; i < 12; i++) {
            Geometry zone = i % 2 == 0 ? safe : hollow;
            Hull art = Hull.of(randomArt(random));
            LargestPlacement placement = LargestPlacement.in(zone);
            Fit best = placement.best(art, -180, 180);
            inside(zone, art, best);
            assertTrue(best.certified());
            for (int k = 0; k < 40; k++) {
                Fit fit = placement.at(art, 360 * random.nextDouble() - 180);
                assertTrue(fit.scale() <= best.scale() * 1.001, best + "\n" + fit);
            }
            Fit narrow = placement.best(art, -15, 15);
            assertTrue(narrow.turn() >= -15 && narrow.turn() <= 15);
            assertTrue(narrow.scale() <= best.scale() * 1.001);
            assertTrue(narrow.scale() >= placement.at(art, 0).scale() * (1 - 1e-9));
        }
    }

    @Test
    void turningZoneAndArtTogetherChangesNothing() {
        Random random = new Random(4);
        for (int i = 0; i < 20; i++) {
            Geometry zone = hollowZone(random);
            Geometry art = randomArt(random);
            double angle = 60 * random.nextDouble();
            Fit straight = LargestPlacement.in(zone).at(art, 0);
            Fit turned = LargestPlacement.in(Shapes.moved(zone, Math.toRadians(angle), 3, 4)).at(art, angle);
            assertEquals(straight.scale(), turned.scale(), 1.1e-3 * straight.scale());
        }
    }
}
