/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.geom.Envelope;
import org.pollex.geometry.shape.PixelGrid;
import org.pollex.print.ColourArea;
import org.pollex.print.pixels.Boundaries;
import org.pollex.print.pixels.Labels;

/**
 * How much there is of each colour of art, and how long its colours lie beside one another. Those that only dark line
 * work divides lie beside one another too. What meets the ground is no boundary: a dark outline that melts into a dark
 * ground is not lost.
 *
 * @param areas    mm2, above 0, by colour (0xRRGGBB)
 * @param lengths  mm, above 0, by pair of colours, the smaller first
 */
public record ColourShares(Map<Integer, Double> areas, Map<Pair, Double> lengths) {

    private static final double MARGIN = 1;

    /** Two colours, 0xRRGGBB, the smaller first. */
    public record Pair(int one, int other) implements Comparable<Pair> {

        /** Two colours in any order. */
        public static Pair of(int a, int b) {
            return new Pair(Math.min(a, b), Math.max(a, b));
        }

        @Override
        public int compareTo(Pair to) {
            return one != to.one ? Integer.compare(one, to.one) : Integer.compare(other, to.other);
        }
    }

    public ColourShares {
        areas = Collections.unmodifiableSortedMap(new TreeMap<>(areas));
        lengths = Collections.unmodifiableSortedMap(new TreeMap<>(lengths));
    }

    /**
     * Measures art on pixels of 0.025 mm, or coarser for art larger than about 30 mm.
     *
     * @param art    its colours, not overlapping, at the size at which it prints
     * @param paper  colour of the ground it was drawn for; it counts where the art encloses it
     */
    public static ColourShares of(List<ColourArea> art, int paper) {
        List<ColourArea> some = art.stream().filter(area -> !area.area().isEmpty()).toList();
        Map<Integer, Double> areas = new TreeMap<>();
        Map<Pair, Double> lengths = new TreeMap<>();
        if (!some.isEmpty()) {
            Envelope box = new Envelope();
            some.forEach(area -> box.expandToInclude(area.area().getEnvelopeInternal()));
            PixelGrid frame = PixelGrid.round(box, MARGIN);
            Labels labels = Labels.of(some, paper, frame);
            List<Integer> colours = new ArrayList<>(some.stream().map(ColourArea::rgb).toList());
            colours.add(paper);
            for (int label : labels.of()) {
                if (label >= 0) {
                    areas.merge(colours.get(label), frame.pixel() * frame.pixel(), Double::sum);
                }
            }
            Map<Pair, Double> direct = lengths(labels.of(), frame, colours);
            Map<Pair, Double> through = lengths(labels.throughLines(), frame, colours);
            lengths.putAll(direct);
            through.forEach((pair, length) -> lengths.merge(pair, length, Math::max));
        }
        return new ColourShares(areas, lengths);
    }

    private static Map<Pair, Double> lengths(int[] of, PixelGrid frame, List<Integer> colours) {
        int n = colours.size();
        double[] sums = new double[n * n];
        Boundaries.walk(frame, (i, k, along) -> {
            if (of[i] != of[k] && of[i] >= 0 && of[k] >= 0) {
                sums[of[i] * n + of[k]] += along;
            }
        });
        Map<Pair, Double> lengths = new TreeMap<>();
        for (int i = 0; i < sums.length; i++) {
            if (sums[i] > 0 && !colours.get(i / n).equals(colours.get(i % n))) {
                lengths.merge(Pair.of(colours.get(i / n), colours.get(i % n)), sums[i], Double::sum);
            }
        }
        return lengths;
    }

    /** These and those of other art together. */
    public ColourShares and(ColourShares other) {
        Map<Integer, Double> all = new TreeMap<>(areas);
        other.areas.forEach((rgb, area) -> all.merge(rgb, area, Double::sum));
        Map<Pair, Double> both = new TreeMap<>(lengths);
        other.lengths.forEach((pair, length) -> both.merge(pair, length, Double::sum));
        return new ColourShares(all, both);
    }
}
