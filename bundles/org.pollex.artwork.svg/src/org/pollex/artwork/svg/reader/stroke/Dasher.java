/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.stroke;

import java.util.ArrayList;
import java.util.List;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.svg.reader.limits.Budget;

/**
 * Cuts subpaths into dashes by arc length. A closed subpath whose pattern is on at both its ends gets one dash there
 * that runs through the start.
 */
final class Dasher {

    private static final double MOST_DASHES = 20_000;

    private final double[] pattern;
    private final double offset;
    private final double sum;
    private final Budget budget;

    Dasher(double[] pattern, double offset, Budget budget) {
        this.pattern = pattern;
        this.budget = budget;
        double total = 0;
        for (double d : pattern) {
            total += d;
        }
        this.sum = total;
        this.offset = ((offset % total) + total) % total;
    }

    void cut(Subpath path, List<Subpath> out) throws ArtException {
        List<Curve> curves = path.curves();
        double[] lengths = new double[curves.size()];
        double total = 0;
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = curves.get(i).length();
            total += lengths[i];
        }
        double count = total / sum * pattern.length;
        if (!(count < MOST_DASHES)) {
            throw budget.tooHeavy("a dashed line has more than " + (int) MOST_DASHES + " dashes");
        }
        budget.segments((long) count);
        List<Subpath> dashes = new ArrayList<>();
        double[] place = start();
        boolean onAtStart = (int) place[0] % 2 == 0;
        boolean on = walk(curves, lengths, place, dashes);
        if (path.closed() && onAtStart && on && dashes.size() > 1) {
            Subpath last = dashes.remove(dashes.size() - 1);
            Subpath first = dashes.get(0);
            List<Curve> joined = new ArrayList<>(last.curves());
            joined.addAll(first.curves());
            dashes.set(0, new Subpath(last.x(), last.y(), joined, false, true));
        } else if (path.closed() && onAtStart && on && dashes.size() == 1 && total <= pattern[(int) place[0]]) {
            dashes.set(0, path);
        }
        out.addAll(dashes);
    }

    /** Index in the pattern and what is left of that entry. */
    private double[] start() {
        int index = 0;
        double rest = offset;
        // A dash without length at the very start is drawn: it may show as a dot.
        while (rest >= pattern[index] && (rest > 0 || pattern[index] > 0) && index < pattern.length - 1) {
            rest -= pattern[index++];
        }
        return new double[] {index, Math.max(0, pattern[index] - rest)};
    }

    private boolean walk(List<Curve> curves, double[] lengths, double[] place, List<Subpath> dashes)
            throws ArtException {
        int index = (int) place[0];
        double left = place[1];
        List<Curve> dash = new ArrayList<>();
        Curve first = curves.get(0);
        double x = first.x0();
        double y = first.y0();
        for (int i = 0; i < lengths.length; i++) {
            Curve curve = curves.get(i);
            double done = 0;
            double from = 0;
            while (lengths[i] - done > left) {
                done += left;
                double to = curve.at(done, lengths[i]);
                if (index % 2 == 0) {
                    if (to > from) {
                        dash.add(curve.part(from, to));
                    }
                    dashes.add(dot(x, y, dash, curve, to));
                    dash = new ArrayList<>();
                } else {
                    x = curve.x(to);
                    y = curve.y(to);
                }
                from = to;
                index = (index + 1) % pattern.length;
                left = pattern[index];
                budget.effort(40);
            }
            left -= lengths[i] - done;
            if (index % 2 == 0 && from < 1) {
                dash.add(curve.part(from, 1));
            }
        }
        if (index % 2 == 0 && !dash.isEmpty()) {
            dashes.add(new Subpath(x, y, dash, false, true));
            return true;
        }
        return false;
    }

    /** A dash; one without length keeps its direction as a very short line, so that square caps stand right. */
    private static Subpath dot(double x, double y, List<Curve> dash, Curve curve, double t) {
        if (dash.isEmpty()) {
            double dx = curve.dx(t);
            double dy = curve.dy(t);
            double length = Math.hypot(dx, dy);
            double step = length > 0 ? curve.size() * 1e-9 / length : 0;
            if (step > 0) {
                dash.add(Curve.line(x, y, x + dx * step, y + dy * step));
            }
        }
        return new Subpath(x, y, dash, false, true);
    }
}
