/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.polarity;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.PixelGrid;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.ColourArea;
import org.pollex.print.MeantArt;
import org.pollex.print.pixels.Boundaries;
import org.pollex.print.pixels.Distance;
import org.pollex.print.pixels.Labels;
import org.pollex.print.pixels.Mask;
import org.pollex.print.pixels.Parts;
import org.pollex.print.pixels.Tracer;

/** Holds the pixels of a piece of art against those of the print. */
final class PolarityMeasure {

    private static final double MARGIN = 1;
    /** How deep inside each part its print is looked at, so that edges trimmed for the press still count, mm. */
    private static final double DEEP = 0.1;
    /** A disc of this diameter, mm, lies in a mass. */
    private static final double MASS = 1.3;
    /** How far a right corner reaches beyond the disc of a mass, and a little more, mm. */
    private static final double CORNER = 0.3;
    private static final double MASS_AREA = 1.6 * MASS * MASS;
    private static final double DARK = 50;
    /** How far round a part the print is looked at to tell whether it is lost, mm. */
    private static final double BESIDE = 0.5;
    /** A part is lost where less than a tenth of the print round it differs from it by this much, L*. */
    private static final double FAINT = 5;
    private static final double HARDLY = 0.1;
    /** Smaller parts are no loss, mm2. */
    private static final double SEEN = 0.25;

    private final MeantArt art;
    private final PixelGrid frame;
    private final int width;
    private final Labels labels;
    private final boolean paperKnown;
    private final int paper;
    /** Lettering and what is covered. */
    private final Mask skipped;
    private float[] print;
    private Distance toDeep;
    private Mask figure;
    private int[] through;
    private Parts fillParts;

    /**
     * @param lettering  boxes of real text
     * @param above      what covers the art
     */
    PolarityMeasure(MeantArt art, List<Geometry> lettering, List<Geometry> above) {
        this.art = art;
        Envelope box = new Envelope();
        art.areas().forEach(area -> box.expandToInclude(area.area().getEnvelopeInternal()));
        if (box.isNull()) {
            box.expandToInclude(0, 0);
        }
        frame = PixelGrid.round(box, MARGIN);
        width = frame.width();
        labels = Labels.of(art.areas(), art.ground().orElse(-1), frame);
        paperKnown = art.ground().isPresent();
        paper = labels.colours().length - 1;
        Mask covered = painted(above);
        skipped = lettering.isEmpty() ? covered : covered.or(letters(lettering));
    }

    /** Parts that lie in a box of real text. */
    private Mask letters(List<Geometry> boxes) {
        Parts parts = Parts.of(labels.of(), width, false);
        boolean[] beyond = parts.touching(painted(boxes).not());
        return Mask.of(frame.size(), width, i -> parts.of()[i] >= 0 && !beyond[parts.of()[i]]);
    }

    private Mask painted(List<Geometry> areas) {
        if (areas.isEmpty()) {
            return Mask.empty(frame.size(), width);
        }
        int[] in = new int[frame.size()];
        areas.forEach(area -> frame.paint(area, 1, in));
        return Mask.of(in.length, width, i -> in[i] != 0);
    }

    /**
     * Measures a print.
     *
     * @param shades  the same print on each of some shades of its stock, over which the orders of light and dark are
     *                taken; what is reversed and lost is that of the print itself
     */
    MarkPolarity measured(PrintedLight printed, List<PrintedLight> shades) {
        MarkPolarity found = measured(printed);
        if (shades.isEmpty()) {
            return found;
        }
        List<MarkPolarity> each = shades.stream().map(this::measured).toList();
        return found.with(ToneOrder.mean(each.stream().map(MarkPolarity::interior).toList()),
                ToneOrder.mean(each.stream().map(MarkPolarity::outline).toList()),
                ToneOrder.mean(each.stream().map(MarkPolarity::fills).toList()));
    }

    private MarkPolarity measured(PrintedLight printed) {
        print = printed.on(frame);
        boolean one = labels.ofOneColour();
        Tally interior = new Tally();
        Tally outline = new Tally();
        boundaries(interior, outline, one);
        if (one) {
            ToneOrder edge = outline.order();
            boolean turned = edge.sum() < 0;
            Geometry where = turned ? Polygons.union(art.areas().stream().map(ColourArea::area).toList())
                    : Polygons.empty();
            return new MarkPolarity(interior.order(), edge, new Tally().order(), true,
                    OptionalDouble.of(pictureness()), where, turned ? 1 : 0, 0, 0);
        }
        Fills fills = new Fills();
        int[] seen = fills.seenAndLost();
        return new MarkPolarity(interior.order(), outline.order(), fills.order(), false, OptionalDouble.empty(),
                fills.reversed(), fills.reversedShare(), seen[0], seen[1]);
    }

    private double pictureness() {
        Mask ink = labels.where(c -> c >= 0 && c != paper).minus(skipped);
        return Pictureness.of(ink, labels.where(c -> c == paper).minus(skipped)).score();
    }

    /** Whether the lightness that is meant there is known. */
    private boolean known(int label) {
        return label >= 0 && label != paper || paperKnown;
    }

    private double meant(int label) {
        return labels.colours()[label == Labels.OUTSIDE ? paper : label].l();
    }

    private void boundaries(Tally interior, Tally outline, boolean one) {
        int[] of = labels.of();
        if (toDeep == null) {
            Mask edge = labels.edges();
            Mask deep = edge.grown(DEEP / frame.pixel() - 1).not();
            // Where two pixels differ that meet at a corner, one beside them lies at an edge.
            toDeep = Distance.to(deep, edge.grown(1.5));
            figure = one || !paperKnown ? null : labels.where(c -> c >= 0).opened(MASS / 2 / frame.pixel())
                    .grown(CORNER / frame.pixel());
        }
        Boundaries.walk(frame, (i, k, along) -> {
            int a = of[i];
            int b = of[k];
            if (a == b || skipped.has(i) || skipped.has(k) || !known(a) || !known(b)) {
                return;
            }
            double printed = print[inside(i, of, toDeep)] - print[inside(k, of, toDeep)];
            boolean outside = a == Labels.OUTSIDE || b == Labels.OUTSIDE;
            if (!outside) {
                interior.add(along, meant(a) - meant(b), printed);
            } else if (figure == null || figure.has(a == Labels.OUTSIDE ? k : i)) {
                outline.add(along, meant(a) - meant(b), printed);
            }
        });
    }

    /** The pixel of the same part that lies deep enough; the same one where the part is too thin to have any. */
    private static int inside(int i, int[] of, Distance toDeep) {
        int deep = toDeep.nearest(i);
        return of[deep] == of[i] ? deep : i;
    }

    /** Parts of one colour, joined through thin dark line work. */
    private final class Fills {

        private final Parts parts;
        private final int[] label;
        private final double[] printed;
        /** Sum of the print just outside the art, by part, and how often it was looked at. */
        private final double[] beyond;
        private final double[] beyonds;
        private final Mask reversed;
        private final Tally tally = new Tally();
        private final double[] turned;
        private final double[] differs;
        private final double[] looked;

        Fills() {
            if (through == null) {
                through = labels.throughLines();
                fillParts = Parts.of(through, width, false);
            }
            parts = fillParts;
            int n = parts.areas().length;
            label = new int[n];
            printed = new double[n];
            turned = new double[n];
            differs = new double[n];
            looked = new double[n];
            beyond = new double[n];
            beyonds = new double[n];
            means();
            Map<Long, double[]> lengths = new HashMap<>();
            Boundaries.walk(frame, (i, k, along) -> {
                int a = parts.of()[i];
                int b = parts.of()[k];
                if (a != b && !skipped.has(i) && !skipped.has(k) && known(through[i]) && known(through[k])) {
                    lengths.computeIfAbsent((long) Math.min(a, b) << 32 | Math.max(a, b) & 0xffffffffL,
                            unknown -> new double[1])[0] += along;
                    look(a, k, k - i);
                    look(b, i, i - k);
                }
            });
            lengths.forEach((pair, length) -> add((int) (pair >> 32), (int) (long) pair, length[0]));
            reversed = reversedMasses();
        }

        /** Looks at the print just outside a part: how much of it differs? */
        private void look(int part, int from, int step) {
            if (part >= 0) {
                int last = (int) (BESIDE / frame.pixel());
                boolean outside = parts.of()[from] < 0;
                for (int n = 0, at = from; n < last && at >= 0 && at < print.length; n++, at += step) {
                    differs[part] += Math.abs(print[at] - printed[part]) >= FAINT ? 1 : 0;
                    looked[part]++;
                    beyond[part] += outside ? print[at] : 0;
                    beyonds[part] += outside ? 1 : 0;
                }
            }
        }

        /** Parts large enough to be seen, and how many of them look like what is round them. */
        int[] seenAndLost() {
            double least = SEEN / frame.pixel() / frame.pixel();
            int seen = 0;
            int lost = 0;
            for (int part = 0; part < label.length; part++) {
                if (looked[part] > 0 && !Double.isNaN(printed[part]) && parts.areas()[part] >= least) {
                    seen++;
                    lost += differs[part] < HARDLY * looked[part] ? 1 : 0;
                }
            }
            return new int[] {seen, lost};
        }

        /** Mean lightness of every part where its own colour lies. */
        private void means() {
            double[] sum = new double[label.length];
            int[] count = new int[label.length];
            for (int i = 0; i < through.length; i++) {
                int part = parts.of()[i];
                if (part >= 0) {
                    label[part] = through[i];
                    if (labels.of()[i] == through[i]) {
                        sum[part] += print[i];
                        count[part]++;
                    }
                }
            }
            for (int part = 0; part < sum.length; part++) {
                // A crumb that is all line work shows nothing of its own colour.
                printed[part] = count[part] == 0 ? Double.NaN : sum[part] / count[part];
            }
        }

        /** @param a a part, or -1 for the outside, which is never a fill but can tell that a mass is reversed */
        private void add(int a, int b, double length) {
            double meant = meant(a < 0 ? Labels.OUTSIDE : label[a]) - meant(label[b]);
            double shown = (a < 0 ? beyond[b] / beyonds[b] : printed[a]) - printed[b];
            if (Double.isNaN(shown)) {
                return;
            }
            if (a >= 0) {
                tally.add(length, meant, shown);
            }
            Tally own = new Tally();
            own.add(length, meant, shown);
            int darker = meant > 0 ? b : a;
            if (darker >= 0) {
                turned[darker] += own.order().sum();
            }
        }

        ToneOrder order() {
            return tally.order();
        }

        private Mask reversedMasses() {
            Mask near = Mask.edges(parts.of(), width).grown(MASS / 2 / frame.pixel() - 1);
            boolean[] thick = parts.touching(near.not());
            double least = MASS_AREA / frame.pixel() / frame.pixel();
            return Mask.of(frame.size(), width, i -> {
                int part = parts.of()[i];
                return part >= 0 && thick[part] && turned[part] < 0 && parts.areas()[part] >= least
                        && meant(label[part]) < DARK && labels.of()[i] == label[part];
            });
        }

        Geometry reversed() {
            return Tracer.of(reversed, frame);
        }

        double reversedShare() {
            return (double) reversed.count() / Math.max(1, labels.where(c -> c >= 0).count());
        }
    }
}
