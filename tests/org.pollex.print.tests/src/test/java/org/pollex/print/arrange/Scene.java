/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random shapes that cross, touch, repeat and share edges, on the grid so that rounding plays no part. */
final class Scene {

    static final double SIZE = 20;

    private final Random random;
    private final List<PaintedShape> shapes = new ArrayList<>();

    private Scene(long seed) {
        random = new Random(seed);
    }

    static List<PaintedShape> of(long seed) {
        Scene scene = new Scene(seed);
        int n = 2 + scene.random.nextInt(8);
        List<ClipShape> clips = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            clips.add(new ClipShape(List.of(scene.ring()), scene.random.nextBoolean()));
        }
        for (int i = 0; i < n; i++) {
            scene.shapes.add(scene.shape(clips));
        }
        return scene.shapes;
    }

    private PaintedShape shape(List<ClipShape> clips) {
        if (!shapes.isEmpty() && random.nextInt(6) == 0) {
            return shapes.get(random.nextInt(shapes.size()));
        }
        List<double[]> rings = new ArrayList<>();
        int n = 1 + random.nextInt(3);
        for (int i = 0; i < n; i++) {
            rings.add(ring());
        }
        List<ClipShape> cut = new ArrayList<>();
        for (ClipShape clip : clips) {
            if (random.nextInt(4) == 0) {
                cut.add(clip);
            }
        }
        return new PaintedShape(rings, random.nextBoolean(), cut, true);
    }

    private double[] ring() {
        return switch (random.nextInt(5)) {
            case 0 -> scribble(3 + random.nextInt(8));
            case 1 -> star(5 + 2 * random.nextInt(4));
            case 2, 3 -> box();
            default -> round(8 + random.nextInt(60));
        };
    }

    private double[] scribble(int n) {
        double[] ring = new double[2 * n];
        for (int i = 0; i < 2 * n; i++) {
            ring[i] = snap((random.nextDouble() - 0.5) * SIZE);
        }
        return ring;
    }

    private double[] star(int n) {
        double[] ring = new double[2 * n];
        double x = place();
        double y = place();
        double r = 0.5 + random.nextDouble() * 5;
        double turn = random.nextDouble() * 6;
        for (int i = 0; i < n; i++) {
            double a = turn + 2 * Math.PI * (i * (n / 2)) / n;
            ring[2 * i] = snap(x + r * Math.cos(a));
            ring[2 * i + 1] = snap(y + r * Math.sin(a));
        }
        return ring;
    }

    private double[] round(int n) {
        double[] ring = new double[2 * n];
        double x = place();
        double y = place();
        double r = 0.2 + random.nextDouble() * 6;
        boolean back = random.nextBoolean();
        for (int i = 0; i < n; i++) {
            double a = (back ? -2 : 2) * Math.PI * i / n;
            ring[2 * i] = snap(x + r * Math.cos(a));
            ring[2 * i + 1] = snap(y + r * Math.sin(a));
        }
        return ring;
    }

    /** Boxes on a coarse raster share many edges. */
    private double[] box() {
        double x = random.nextInt(8) - 5;
        double y = random.nextInt(8) - 5;
        double w = 1 + random.nextInt(4);
        double h = 1 + random.nextInt(4);
        return random.nextBoolean() ? new double[] {x, y, x + w, y, x + w, y + h, x, y + h}
                : new double[] {x, y, x, y + h, x + w, y + h, x + w, y};
    }

    private double place() {
        return (random.nextDouble() - 0.5) * (SIZE - 6);
    }

    private static double snap(double mm) {
        return Math.rint(mm * 1e5) / 1e5;
    }
}
