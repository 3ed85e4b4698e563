/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour;

import java.util.Locale;
import java.util.OptionalInt;

/**
 * The colours of screens and art files: sRGB (IEC 61966-2-1) as {@code 0xRRGGBB}, read and written as
 * {@code #rrggbb}, and their way to CIELAB D50 and back. Curve and matrices are those of CSS Color 4 (W3C), sample
 * code,
 * with the matrix as exact fractions.
 */
public final class Srgb {

    private static final double[] TO_XYZ = {506752.0 / 1228815, 87881.0 / 245763, 12673.0 / 70218,
        87098.0 / 409605, 175762.0 / 245763, 12673.0 / 175545,
        7918.0 / 409605, 87881.0 / 737289, 1001167.0 / 1053270};
    private static final double[] FROM_XYZ = {12831.0 / 3959, -329.0 / 214, -1974.0 / 3959,
        -851781.0 / 878810, 1648619.0 / 878810, 36519.0 / 878810,
        705.0 / 12673, -2585.0 / 12673, 705.0 / 667};
    private static final double GAMUT_SLACK = 1e-4;
    private static final double[] LINEAR = new double[256];

    static {
        for (int i = 0; i < 256; i++) {
            LINEAR[i] = decode(i / 255.0);
        }
    }

    private Srgb() {
    }

    /** Light of an encoded value, both 0 to 1; values outside are mirrored through 0. */
    public static double decode(double encoded) {
        double size = Math.abs(encoded);
        return size <= 0.04045 ? encoded / 12.92 : Math.copySign(Math.pow((size + 0.055) / 1.055, 2.4), encoded);
    }

    /** Encoded value of light, both 0 to 1; values outside are mirrored through 0. */
    public static double encode(double light) {
        double size = Math.abs(light);
        return size <= 0.0031308 ? light * 12.92
                : Math.copySign(1.055 * Math.pow(size, 1 / 2.4) - 0.055, light);
    }

    /** Light of an eight-bit value 0 to 255. */
    static double light(int value) {
        return LINEAR[value & 0xff];
    }

    /** XYZ under D65 of a colour. */
    public static Xyz xyz(int rgb) {
        return xyz(light(rgb >> 16), light(rgb >> 8), light(rgb));
    }

    /** XYZ under D65 of light in red, green and blue, 1 each for white. */
    public static Xyz xyz(double red, double green, double blue) {
        return new Xyz(red, green, blue).times(TO_XYZ);
    }

    /** CIELAB D50 of a colour. */
    public static Lab lab(int rgb) {
        return Lab.ofXyz(xyz(rgb).fromD65ToD50());
    }

    /** The nearest colour by clipping each of red, green and blue; exact for colours that a screen can show. */
    public static int of(Lab lab) {
        Xyz light = linear(lab);
        return eight(light.x()) << 16 | eight(light.y()) << 8 | eight(light.z());
    }

    /** Whether a screen of this kind can show the colour, to within 0.0001 of the light of white. */
    public static boolean shows(Lab lab) {
        Xyz light = linear(lab);
        return within(light.x()) && within(light.y()) && within(light.z());
    }

    private static Xyz linear(Lab lab) {
        return lab.toXyz().fromD50ToD65().times(FROM_XYZ);
    }

    private static boolean within(double light) {
        return light >= -GAMUT_SLACK && light <= 1 + GAMUT_SLACK;
    }

    private static int eight(double light) {
        return (int) Math.round(255 * Math.max(0, Math.min(1, encode(light))));
    }

    /** The text of a colour: {@code #rrggbb}, lower case. */
    public static String format(int rgb) {
        return String.format(Locale.ROOT, "#%06x", rgb & 0xffffff);
    }

    /**
     * Reads {@code #rrggbb} in either case, with blanks round it.
     *
     * @return the colour, or nothing when the text is anything else
     */
    public static OptionalInt parse(String text) {
        String hex = text.strip();
        if (hex.length() != 7 || hex.charAt(0) != '#') {
            return OptionalInt.empty();
        }
        int rgb = 0;
        for (int i = 1; i < 7; i++) {
            char c = hex.charAt(i);
            int digit = c < 128 ? Character.digit(c, 16) : -1;
            if (digit < 0) {
                return OptionalInt.empty();
            }
            rgb = rgb << 4 | digit;
        }
        return OptionalInt.of(rgb);
    }

    /**
     * A colour laid over another with an opacity, mixed in encoded values as SVG and CSS mix by default.
     *
     * @param opacity 0 (only the lower one shows) to 1 (only the upper one)
     */
    public static int over(int upper, double opacity, int lower) {
        return mix(upper >> 16, opacity, lower >> 16) << 16 | mix(upper >> 8, opacity, lower >> 8) << 8
                | mix(upper, opacity, lower);
    }

    private static int mix(int upper, double opacity, int lower) {
        return (int) Math.round((upper & 0xff) * opacity + (lower & 0xff) * (1 - opacity));
    }
}
