/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.testkit;

import java.awt.image.BufferedImage;

/**
 * How alike two pictures look: the structural similarity of Z. Wang, A. C. Bovik, H. R. Sheikh, E. P. Simoncelli,
 * "Image quality assessment: from error visibility to structural similarity", IEEE Transactions on Image Processing
 * 13(4), 600-612, 2004: a Gaussian window of 11 x 11 pixels with sigma 1.5, K1 0.01, K2 0.03, values 0 to 255, only
 * windows that lie wholly in the picture. 1 for pictures that are the same, less for others, below 0 for opposites.
 */
public final class Ssim {

    /** Width and height of a window, pixels. */
    public static final int WINDOW = 11;

    private static final double SIGMA = 1.5;
    private static final double C1 = 0.01 * 255 * 0.01 * 255;
    private static final double C2 = 0.03 * 255 * 0.03 * 255;
    private static final double[] WEIGHTS = weights();

    private Ssim() {
    }

    private static double[] weights() {
        double[] weights = new double[WINDOW];
        double sum = 0;
        for (int i = 0; i < WINDOW; i++) {
            double far = i - WINDOW / 2;
            weights[i] = Math.exp(-far * far / (2 * SIGMA * SIGMA));
            sum += weights[i];
        }
        for (int i = 0; i < WINDOW; i++) {
            weights[i] /= sum;
        }
        return weights;
    }

    /** Weight of a pixel in the window by its column and row, 0 to 10; all weights sum to 1. */
    public static double weight(int column, int row) {
        return WEIGHTS[column] * WEIGHTS[row];
    }

    /** Mean over red, green and blue of the similarity of two pictures of the same size, 11 x 11 pixels at least. */
    public static double of(BufferedImage one, BufferedImage other) {
        int w = one.getWidth();
        int h = one.getHeight();
        if (other.getWidth() != w || other.getHeight() != h) {
            throw new IllegalArgumentException("The pictures measure " + w + " x " + h + " and " + other.getWidth()
                    + " x " + other.getHeight() + ".");
        }
        double sum = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            sum += of(channel(one, shift), channel(other, shift), w);
        }
        return sum / 3;
    }

    private static double[] channel(BufferedImage image, int shift) {
        int[] rgb = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        double[] values = new double[rgb.length];
        for (int i = 0; i < rgb.length; i++) {
            values[i] = rgb[i] >> shift & 0xff;
        }
        return values;
    }

    /**
     * Mean over all windows of two pictures of one channel.
     *
     * @param one    values 0 to 255 row by row
     * @param other  as many
     * @param width  pixels in a row, 11 or more
     */
    public static double of(double[] one, double[] other, int width) {
        int height = one.length / width;
        if (width < WINDOW || height < WINDOW || other.length != one.length) {
            throw new IllegalArgumentException("Two pictures of the same size and of 11 x 11 pixels at least.");
        }
        double sum = 0;
        for (int top = 0; top + WINDOW <= height; top++) {
            for (int left = 0; left + WINDOW <= width; left++) {
                sum += window(one, other, width, top * width + left);
            }
        }
        return sum / ((height - WINDOW + 1) * (width - WINDOW + 1));
    }

    private static double window(double[] one, double[] other, int width, int first) {
        double a = 0;
        double b = 0;
        double aa = 0;
        double bb = 0;
        double ab = 0;
        for (int row = 0; row < WINDOW; row++) {
            for (int column = 0; column < WINDOW; column++) {
                double weight = weight(column, row);
                double x = one[first + row * width + column];
                double y = other[first + row * width + column];
                a += weight * x;
                b += weight * y;
                aa += weight * x * x;
                bb += weight * y * y;
                ab += weight * x * y;
            }
        }
        return (2 * a * b + C1) * (2 * (ab - a * b) + C2)
                / ((a * a + b * b + C1) * (aa - a * a + bb - b * b + C2));
    }
}
