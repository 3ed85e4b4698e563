/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.WKBWriter;
import org.locationtech.jts.operation.overlayng.OverlayNG;

class ArrangementTest {

    private static final int SCENES = 500;

    /** 500 random scenes against the overlay of JTS: same area of every shape, valid, nothing twice. */
    @Test
    void randomScenesAgreeWithAnOverlayChain() throws Exception {
        for (int seed = 0; seed < SCENES; seed++) {
            List<PaintedShape> scene = Scene.of(seed);
            SortedMap<Integer, Geometry> areas = arrange(scene).areas();
            List<Geometry> expected = OverlayChain.visible(scene);
            double tolerance = 1e-6 * Scene.SIZE * Scene.SIZE;
            double sum = 0;
            for (int i = 0; i < scene.size(); i++) {
                Geometry area = areas.get(i + 1);
                double size = area == null ? 0 : area.getArea();
                sum += size;
                assertEquals(expected.get(i).getArea(), size, tolerance, "scene " + seed + " shape " + i);
                if (area != null) {
                    assertTrue(area.isValid(), "scene " + seed + " shape " + i);
                    Geometry off = OverlayChain.areas(area, expected.get(i), OverlayNG.SYMDIFFERENCE);
                    assertEquals(0, off.getArea(), 2 * tolerance, "scene " + seed + " shape " + i);
                }
            }
            assertNoOverlaps(areas, seed);
            Geometry all = arrange(scene).area(label -> true);
            assertTrue(all.isValid());
            assertEquals(all.getArea(), sum, 1e-9, "scene " + seed);
        }
    }

    private static void assertNoOverlaps(SortedMap<Integer, Geometry> areas, int seed) {
        List<Geometry> list = new ArrayList<>(areas.values());
        for (int i = 0; i < list.size(); i++) {
            for (int j = 0; j < i; j++) {
                Geometry shared = OverlayChain.areas(list.get(i), list.get(j), OverlayNG.INTERSECTION);
                assertEquals(0, shared.getArea(), 1e-12, "scene " + seed);
            }
        }
    }

    @Test
    void sizesAreTheAreas() throws Exception {
        for (int seed = 0; seed < 50; seed++) {
            Arrangement arrangement = arrange(Scene.of(seed));
            SortedMap<Integer, Double> sizes = arrangement.sizes();
            SortedMap<Integer, Geometry> areas = arrangement.areas();
            assertEquals(areas.keySet(), sizes.keySet());
            areas.forEach((label, area) -> assertEquals(area.getArea(), sizes.get(label), 1e-8));
        }
    }

    @Test
    void sameInputGivesSameBytes() throws Exception {
        for (int seed = 0; seed < 20; seed++) {
            SortedMap<Integer, Geometry> one = arrange(Scene.of(seed)).areas();
            SortedMap<Integer, Geometry> two = arrange(Scene.of(seed)).areas();
            assertEquals(one.keySet(), two.keySet());
            for (Map.Entry<Integer, Geometry> entry : one.entrySet()) {
                assertArrayEquals(new WKBWriter().write(entry.getValue()),
                        new WKBWriter().write(two.get(entry.getKey())));
            }
        }
    }

    @Test
    void theOrderOfShapesApartDoesNotMatter() throws Exception {
        List<PaintedShape> apart = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            double x = i % 8 * 3;
            double y = i / 8 * 3;
            apart.add(PaintedShape.of(List.of(new double[] {x, y, x + 2, y, x + 1, y + 2}), false));
        }
        Geometry first = arrange(apart).area(label -> true).norm();
        Collections.shuffle(apart, new Random(7));
        assertTrue(first.equalsExact(arrange(apart).area(label -> true).norm()));
        assertEquals(40, first.getNumGeometries());
    }

    @Test
    void edgesThatCrossAtOneGridPointAndLongThinOnesAreCut() throws Exception {
        List<PaintedShape> needles = new ArrayList<>();
        Random random = new Random(3);
        for (int i = 0; i < 200; i++) {
            double a = random.nextDouble() * Math.PI;
            double c = 10 * Math.cos(a);
            double s = 10 * Math.sin(a);
            needles.add(PaintedShape.of(List.of(new double[] {-c, -s, c, s, c + 0.0003, s - 0.0002}), false));
        }
        SortedMap<Integer, Geometry> areas = arrange(needles).areas();
        areas.values().forEach(area -> assertTrue(area.isValid()));
        assertNoOverlaps(areas, 0);
    }

    /** Detail down to a few grid steps, where rounding moves edges by as much as they are apart. */
    @Test
    void detailAsSmallAsTheGridStaysSound() throws Exception {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<PaintedShape> tiny = new ArrayList<>();
            for (int i = 0; i < 30; i++) {
                double[] ring = new double[6 + 2 * random.nextInt(6)];
                for (int k = 0; k < ring.length; k++) {
                    ring[k] = random.nextInt(25) * 1e-5;
                }
                tiny.add(PaintedShape.of(List.of(ring), random.nextBoolean()));
            }
            SortedMap<Integer, Geometry> areas = arrange(tiny).areas();
            double sum = 0;
            for (Geometry area : areas.values()) {
                assertTrue(area.isValid(), "seed " + seed);
                sum += area.getArea();
            }
            assertEquals(arrange(tiny).area(label -> true).getArea(), sum, 1e-15);
        }
    }

    @Test
    void aThousandCrossingsAreFineAndAMillionAreRefused() throws Exception {
        assertTrue(arrange(List.of(scribble(150))).area(label -> true).isValid());
        TooIntricateException refused = assertThrows(TooIntricateException.class,
                () -> arrange(List.of(scribble(2000))));
        assertTrue(refused.getMessage().contains("cross one another"), refused.getMessage());
    }

    @Test
    void bundlesOfNearlyEqualEdgesAreRefused() {
        List<double[]> rings = new ArrayList<>();
        Random random = new Random(1);
        for (int i = 0; i < 40_000; i++) {
            double y = random.nextInt(30) * 1e-5;
            rings.add(new double[] {-random.nextDouble(), y, 20 + random.nextDouble(), y + 1e-5, 10, y + 2e-5});
        }
        assertThrows(TooIntricateException.class, () -> arrange(List.of(PaintedShape.of(rings, false))));
    }

    @Test
    void tooManyCornersAndTooFarAreRefused() {
        ArrangeLimits few = new ArrangeLimits(10, 10, 1000);
        List<PaintedShape> shapes = List.of(scribble(11));
        assertThrows(TooIntricateException.class,
                () -> Arrangement.of(shapes, FacePainter.topmost(), few, () -> false));
        for (double far : new double[] {5001, Double.NaN, Double.POSITIVE_INFINITY}) {
            List<double[]> rings = List.of(new double[] {0, 0, far, 0, 0, 1});
            assertThrows(TooIntricateException.class, () -> arrange(List.of(PaintedShape.of(rings, false))));
        }
    }

    @Test
    void canBeCancelled() {
        assertThrows(CancellationException.class, () -> Arrangement.of(List.of(scribble(300)),
                FacePainter.topmost(), ArrangeLimits.usual(), () -> true));
    }

    @Test
    void nothingGivesNothing() throws Exception {
        assertTrue(arrange(List.of()).areas().isEmpty());
        assertTrue(arrange(List.of(PaintedShape.of(List.of(), false))).area(label -> true).isEmpty());
        assertTrue(arrange(List.of(PaintedShape.of(List.of(new double[] {1, 1, 1, 1, 1, 1}), false))).areas()
                .isEmpty());
        assertTrue(arrange(List.of(PaintedShape.of(List.of(new double[] {1, 1, 5, 1, 3, 1}), false))).areas()
                .isEmpty());
    }

    private static PaintedShape scribble(int n) {
        Random random = new Random(n);
        double[] ring = new double[2 * n];
        for (int i = 0; i < ring.length; i++) {
            ring[i] = random.nextDouble() * 28;
        }
        return PaintedShape.of(List.of(ring), true);
    }

    static Arrangement arrange(List<PaintedShape> shapes) throws TooIntricateException {
        return Arrangement.of(shapes, FacePainter.topmost(), ArrangeLimits.usual(), () -> false);
    }
}
