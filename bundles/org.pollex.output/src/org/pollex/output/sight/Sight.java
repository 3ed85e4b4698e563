/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.sight;

import java.awt.image.BufferedImage;

/**
 * What an eye resolves at a distance. An eye of visual acuity 1 tells apart two points one minute of arc apart, and
 * reads a letter five minutes high (ISO 8596:2017, Landolt ring: ring 5', gap 1'). A size seen under an angle at a
 * distance d is {@code 2 d tan(angle / 2)}.
 *
 * <p>The blur is a Gaussian whose width at half height is what the eye just resolves; that shape is a simplification.
 * Good light and full contrast are assumed; what is dim or pale is lost sooner.
 */
public final class Sight {

    private static final double GAP_MINUTES = 1;
    private static final double LETTER_MINUTES = 5;
    /** Width at half height of a Gaussian in standard deviations. */
    private static final double HALF_HEIGHT = 2 * Math.sqrt(2 * Math.log(2));
    private static final double FARTHEST = 3;

    private Sight() {
    }

    /** Size in mm seen under an angle in minutes of arc at a distance in mm. */
    public static double size(double minutes, double distance) {
        return 2 * distance * Math.tan(Math.toRadians(minutes / 60) / 2);
    }

    /** The smallest detail resolved, mm, at a distance in mm with a visual acuity such as 1.0. */
    public static double detail(double distance, double acuity) {
        return size(GAP_MINUTES / acuity, distance);
    }

    /** The smallest letter height read, mm, at a distance in mm. */
    public static double letter(double distance, double acuity) {
        return size(LETTER_MINUTES / acuity, distance);
    }

    /** From how far a letter of a height in mm is read, mm. */
    public static double reads(double letter, double acuity) {
        return letter / (2 * Math.tan(Math.toRadians(LETTER_MINUTES / acuity / 60) / 2));
    }

    /**
     * A picture as the eye sees it: blurred in linear light by what it resolves. The size stays.
     *
     * @param scale    pixels a millimetre of the picture
     * @param distance mm
     */
    public static BufferedImage from(BufferedImage picture, double scale, double distance, double acuity) {
        double sigma = detail(distance, acuity) * scale / HALF_HEIGHT;
        int width = picture.getWidth();
        int height = picture.getHeight();
        float[] kernel = kernel(sigma);
        int[] rgb = picture.getRGB(0, 0, width, height, null, 0, width);
        float[][] planes = new float[3][];
        for (int i = 0; i < 3; i++) {
            float[] plane = new float[rgb.length];
            for (int at = 0; at < rgb.length; at++) {
                plane[at] = (float) org.pollex.colour.Srgb.decode((rgb[at] >> 16 - 8 * i & 255) / 255.0);
            }
            planes[i] = down(along(plane, width, height, kernel), width, height, kernel);
        }
        BufferedImage seen = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int at = 0; at < rgb.length; at++) {
            int value = 0;
            for (int i = 0; i < 3; i++) {
                value = value << 8 | (int) Math.round(255 * org.pollex.colour.Srgb.encode(planes[i][at]));
            }
            rgb[at] = value;
        }
        seen.setRGB(0, 0, width, height, rgb, 0, width);
        return seen;
    }

    private static float[] kernel(double sigma) {
        int reach = Math.max(0, (int) Math.ceil(FARTHEST * sigma));
        float[] kernel = new float[2 * reach + 1];
        double sum = 0;
        for (int i = -reach; i <= reach; i++) {
            double value = sigma <= 0 ? 1 : Math.exp(-0.5 * i * i / (sigma * sigma));
            kernel[i + reach] = (float) value;
            sum += value;
        }
        for (int i = 0; i < kernel.length; i++) {
            kernel[i] /= (float) sum;
        }
        return kernel;
    }

    private static float[] along(float[] plane, int width, int height, float[] kernel) {
        float[] out = new float[plane.length];
        int reach = kernel.length / 2;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                float sum = 0;
                for (int k = -reach; k <= reach; k++) {
                    sum += kernel[k + reach] * plane[y * width + Math.max(0, Math.min(width - 1, x + k))];
                }
                out[y * width + x] = sum;
            }
        }
        return out;
    }

    private static float[] down(float[] plane, int width, int height, float[] kernel) {
        float[] out = new float[plane.length];
        int reach = kernel.length / 2;
        for (int y = 0; y < height; y++) {
            for (int k = -reach; k <= reach; k++) {
                int from = Math.max(0, Math.min(height - 1, y + k)) * width;
                float weight = kernel[k + reach];
                for (int x = 0; x < width; x++) {
                    out[y * width + x] += weight * plane[from + x];
                }
            }
        }
        return out;
    }
}
