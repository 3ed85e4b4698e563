/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.snap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;

/**
 * Where does a box come to lie that is moved near lines to keep to? Each direction by itself: the edge or middle of the
 * box that is nearest to a line is put on it when it is within reach. All in mm.
 */
public final class Snapper {

    /** What a line comes from; of lines equally near the first kind wins. */
    public enum Source { GUIDE, CENTRE, ZONE, ART }

    /** A line to keep to: upright at an x, or level at a y. */
    public record Line(boolean upright, double at, Source source) {
    }

    /** How far to shift, and the lines that are then kept to. */
    public record Snap(double dx, double dy, List<Line> lines) {

        /** Stays where it is. */
        public static final Snap NONE = new Snap(0, 0, List.of());

        public Snap {
            lines = List.copyOf(lines);
        }
    }

    private record Hit(double shift, Line line) {
    }

    private Snapper() {
    }

    /** Both edges and both middles of a box as lines. */
    public static List<Line> of(Envelope box, Source source) {
        if (box.isNull()) {
            return List.of();
        }
        return List.of(new Line(true, box.getMinX(), source), new Line(true, box.centre().x, source),
                new Line(true, box.getMaxX(), source), new Line(false, box.getMinY(), source),
                new Line(false, box.centre().y, source), new Line(false, box.getMaxY(), source));
    }

    /** @param reach  how near a line must be, above 0 */
    public static Snap snap(Envelope box, List<Line> lines, double reach) {
        if (box.isNull()) {
            return Snap.NONE;
        }
        Optional<Hit> across = best(new double[] {box.centre().x, box.getMinX(), box.getMaxX()}, lines, true, reach);
        Optional<Hit> down = best(new double[] {box.centre().y, box.getMinY(), box.getMaxY()}, lines, false, reach);
        List<Line> kept = new ArrayList<>();
        across.ifPresent(each -> kept.add(each.line()));
        down.ifPresent(each -> kept.add(each.line()));
        return new Snap(across.map(Hit::shift).orElse(0.0), down.map(Hit::shift).orElse(0.0), kept);
    }

    private static Optional<Hit> best(double[] places, List<Line> lines, boolean upright, double reach) {
        Hit best = null;
        for (Line line : lines) {
            for (double place : places) {
                double shift = line.at() - place;
                if (line.upright() == upright && Math.abs(shift) <= reach && better(shift, line, best)) {
                    best = new Hit(shift, line);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static boolean better(double shift, Line line, Hit best) {
        if (best == null) {
            return true;
        }
        int nearer = Double.compare(Math.abs(shift), Math.abs(best.shift()));
        return nearer < 0 || nearer == 0 && line.source().compareTo(best.line().source()) < 0;
    }
}
