/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.Arrays;
import org.pollex.print.pixels.Labels;

/**
 * From which lightness on is a colour of this art light? Chosen so that neighbours that differ much fall on different
 * sides; neighbours are also those that only line work parts, because outlined art has no others.
 */
final class Threshold {

    private static final double LOWEST = 30;
    private static final double HIGHEST = 70;
    private static final double MIDDLE = 50;

    private Threshold() {
    }

    static double of(Labels labels) {
        int n = labels.colours().length;
        double[][] weight = new double[n][n];
        count(labels, labels.of(), 0.5, weight);
        count(labels, labels.throughLines(), 1, weight);
        double[] l = new double[n];
        for (int c = 0; c < n; c++) {
            l[c] = Math.min(HIGHEST, Math.max(LOWEST, labels.colours()[c].l()));
        }
        double[] sorted = l.clone();
        Arrays.sort(sorted);
        double best = MIDDLE;
        double most = worth(MIDDLE, labels, weight);
        for (int i = 0; i + 1 < n; i++) {
            double t = (sorted[i] + sorted[i + 1]) / 2;
            double worth = worth(t, labels, weight);
            if (worth > most + 1e-9) {
                most = worth;
                best = t;
            }
        }
        return best;
    }

    private static double worth(double t, Labels labels, double[][] weight) {
        double sum = 0;
        for (int a = 0; a < weight.length; a++) {
            for (int b = 0; b < weight.length; b++) {
                double la = labels.colours()[a].l();
                double lb = labels.colours()[b].l();
                if (la >= t != lb >= t) {
                    sum += weight[a][b] * Math.min(50, Math.abs(la - lb));
                }
            }
        }
        return sum * (1 - 0.004 * Math.abs(t - MIDDLE));
    }

    private static void count(Labels labels, int[] of, double each, double[][] weight) {
        int w = labels.frame().width();
        for (int i = 0; i + w < of.length; i++) {
            for (int k = i + 1; k <= i + w; k += w - 1) {
                if (of[i] >= 0 && of[k] >= 0 && of[i] != of[k]) {
                    weight[of[i]][of[k]] += each;
                }
            }
        }
    }
}
