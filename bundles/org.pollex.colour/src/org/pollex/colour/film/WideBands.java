/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.film;

import org.pollex.colour.Lab;
import org.pollex.colour.Xyz;

/**
 * Three broad bands: linear light in the primaries of Rec. ITU-R BT.2020, which hold every printed colour. Faster than
 * spectra, and the best three bands measured for films of ink.
 */
final class WideBands implements Bands {

    // Primaries and white of Rec. ITU-R BT.2020, table 3.
    private static final double[][] PRIMARIES = {{0.708, 0.292}, {0.170, 0.797}, {0.131, 0.046}};
    private static final double[][] FROM_XYZ;
    private static final double[][] TO_XYZ = new double[3][3];

    static {
        double[][] columns = new double[3][4];
        for (int i = 0; i < 3; i++) {
            double x = PRIMARIES[i][0];
            double y = PRIMARIES[i][1];
            columns[0][i] = x / y;
            columns[1][i] = 1;
            columns[2][i] = (1 - x - y) / y;
        }
        columns[0][3] = Xyz.D65.x();
        columns[1][3] = Xyz.D65.y();
        columns[2][3] = Xyz.D65.z();
        double[][] kept = {columns[0].clone(), columns[1].clone(), columns[2].clone()};
        double[] scale = Elimination.solve(columns);
        for (int row = 0; row < 3; row++) {
            for (int i = 0; i < 3; i++) {
                TO_XYZ[row][i] = kept[row][i] * scale[i];
            }
        }
        FROM_XYZ = inverse(TO_XYZ);
    }

    private static double[][] inverse(double[][] matrix) {
        double[][] inverse = new double[3][3];
        for (int column = 0; column < 3; column++) {
            double[][] m = new double[3][4];
            for (int row = 0; row < 3; row++) {
                System.arraycopy(matrix[row], 0, m[row], 0, 3);
                m[row][3] = row == column ? 1 : 0;
            }
            double[] solved = Elimination.solve(m);
            for (int row = 0; row < 3; row++) {
                inverse[row][column] = solved[row];
            }
        }
        return inverse;
    }

    @Override
    public double[] of(Lab colour) {
        Xyz xyz = colour.toXyz().fromD50ToD65();
        return times(FROM_XYZ, xyz.x(), xyz.y(), xyz.z());
    }

    @Override
    public Lab lab(double[] reflectance) {
        double[] xyz = times(TO_XYZ, reflectance[0], reflectance[1], reflectance[2]);
        return Lab.ofXyz(new Xyz(xyz[0], xyz[1], xyz[2]).fromD65ToD50());
    }

    private static double[] times(double[][] m, double x, double y, double z) {
        double[] out = new double[3];
        for (int row = 0; row < 3; row++) {
            out[row] = m[row][0] * x + m[row][1] * y + m[row][2] * z;
        }
        return out;
    }
}
