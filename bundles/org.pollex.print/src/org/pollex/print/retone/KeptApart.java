/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;

/**
 * Which ink, or bare stock, should each colour of art print in so that parts which differ in the art differ in print
 * too and keep their order of light and dark, even where another ink is nearer?
 *
 * <p>Choices are held against one another by what they cost: for each colour its area (mm2) times the colour
 * difference to what it prints as, over 25; for each boundary its length (mm) times -2 to 2 as the order of light and
 * dark is kept or turned, and times 1.5 more where what should differ prints alike. Colour differences are CIEDE2000.
 * The weights are judgement. Parts stay distinct at the price of hues that the art does not have. One colour after
 * another takes what costs least until nothing changes, from the nearest choice and from seven others drawn by a
 * generator with a fixed seed; the best of the eight wins. So it never costs more than the nearest choice, but another
 * one may cost less still.
 */
public final class KeptApart {

    /** Colours that differ this much, CIEDE2000, are meant to be seen apart. */
    public static final double DIFFERENT = 10;
    /** What differs less than this, CIEDE2000, prints alike. */
    public static final double ALIKE = 5;

    private static final int STARTS = 8;
    private static final long SEED = 20_261;
    private static final double FAR = 25;
    private static final double ORDER = 2;
    private static final double MERGED = 1.5;
    private static final double SLIGHT = 5;
    private static final double FULL = 50;
    private static final double CLEAR = 10;
    private static final double NEVER = 1e9;
    private static final double LESS = 1e-9;

    private final List<Integer> colours;
    private final List<Lab> printed;
    private final List<List<Edge>> edges = new ArrayList<>();
    private final double[][] own;
    private final boolean[][] alike;

    /** A boundary of a colour with another one. */
    private record Edge(int other, double length, double meant, boolean differ) {
    }

    /**
     * Prepares a choice.
     *
     * @param shares   what the art is
     * @param printed  how each ink, or the bare stock, looks; at least one
     * @param fixed    colours that have no choice, with the position of what they print in
     */
    public KeptApart(ColourShares shares, List<Lab> printed, Map<Integer, Integer> fixed) {
        if (printed.isEmpty()) {
            throw new IllegalArgumentException("There must be an ink or bare stock to choose from.");
        }
        this.colours = List.copyOf(shares.areas().keySet());
        this.printed = List.copyOf(printed);
        int n = printed.size();
        own = new double[colours.size()][n];
        alike = new boolean[n][n];
        for (int p = 0; p < n; p++) {
            for (int q = 0; q < n; q++) {
                alike[p][q] = DeltaE.ciede2000(printed.get(p), printed.get(q)) < ALIKE;
            }
            for (int c = 0; c < own.length; c++) {
                own[c][p] = shares.areas().get(colours.get(c))
                        * DeltaE.ciede2000(Srgb.lab(colours.get(c)), printed.get(p)) / FAR
                        + (fixed.getOrDefault(colours.get(c), p) == p ? 0 : NEVER);
            }
        }
        colours.forEach(each -> edges.add(new ArrayList<>()));
        shares.lengths().forEach((pair, length) -> {
            int a = colours.indexOf(pair.one());
            int b = colours.indexOf(pair.other());
            if (a >= 0 && b >= 0) {
                Lab one = Srgb.lab(pair.one());
                Lab other = Srgb.lab(pair.other());
                boolean differ = DeltaE.ciede2000(one, other) >= DIFFERENT;
                edges.get(a).add(new Edge(b, length, one.l() - other.l(), differ));
                edges.get(b).add(new Edge(a, length, other.l() - one.l(), differ));
            }
        });
    }

    /** The colours to be chosen for, 0xRRGGBB, rising. */
    public List<Integer> colours() {
        return colours;
    }

    /** For each colour the position of what comes nearest to it, the first of those that come equally near. */
    public int[] nearest() {
        int[] choice = new int[colours.size()];
        for (int c = 0; c < choice.length; c++) {
            for (int p = 1; p < printed.size(); p++) {
                if (own[c][p] < own[c][choice[c]]) {
                    choice[c] = p;
                }
            }
        }
        return choice;
    }

    /** For each colour the position of what it should print in. The same input gives the same answer. */
    public int[] best() {
        int[] best = settled(nearest());
        double least = cost(best);
        Random random = new Random(SEED);
        for (int start = 1; start < STARTS; start++) {
            int[] any = new int[colours.size()];
            for (int c = 0; c < any.length; c++) {
                any[c] = random.nextInt(printed.size());
            }
            int[] choice = settled(any);
            double cost = cost(choice);
            if (cost < least - LESS) {
                least = cost;
                best = choice;
            }
        }
        return best;
    }

    /** Lets one colour after another take what costs least while the others stay. */
    private int[] settled(int[] choice) {
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int c = 0; c < choice.length; c++) {
                double least = cost(c, choice[c], choice);
                for (int p = 0; p < printed.size(); p++) {
                    double cost = cost(c, p, choice);
                    if (cost < least - LESS) {
                        least = cost;
                        choice[c] = p;
                        changed = true;
                    }
                }
            }
        }
        return choice;
    }

    /** What of the cost changes with one colour. */
    private double cost(int colour, int print, int[] choice) {
        double cost = own[colour][print];
        for (Edge edge : edges.get(colour)) {
            cost += cost(edge, print, choice[edge.other]);
        }
        return cost;
    }

    private double cost(Edge edge, int print, int beside) {
        double weight = Math.abs(edge.meant) < SLIGHT ? 0 : Math.min(FULL, Math.abs(edge.meant)) / FULL;
        double sign = Math.max(-1, Math.min(1, (printed.get(print).l() - printed.get(beside).l())
                * Math.signum(edge.meant) / CLEAR));
        return edge.length * (-ORDER * sign * weight + (edge.differ && alike[print][beside] ? MERGED : 0));
    }

    /** What a choice costs; less is better, and it may be below 0. */
    public double cost(int[] choice) {
        double cost = 0;
        for (int c = 0; c < choice.length; c++) {
            cost += own[c][choice[c]];
            for (Edge edge : edges.get(c)) {
                cost += edge.other > c ? cost(edge, choice[c], choice[edge.other]) : 0;
            }
        }
        return cost;
    }

    /** Pairs of colours that lie beside one another and should differ, but print alike in a choice. */
    public List<ColourShares.Pair> merged(int[] choice) {
        List<ColourShares.Pair> merged = new ArrayList<>();
        for (int c = 0; c < choice.length; c++) {
            for (Edge edge : edges.get(c)) {
                if (edge.other > c && edge.differ && alike[choice[c]][choice[edge.other]]) {
                    merged.add(new ColourShares.Pair(colours.get(c), colours.get(edge.other)));
                }
            }
        }
        return merged;
    }
}
