/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The colour functions of CSS Color 4, their conversions as in its sections 7, 8, 9, 10 and sample code. */
final class ColourFunctions {

    /** One argument: number, whether with a percent sign, and whether it was an angle. */
    private record Part(double value, boolean percent) {
        double of(double full) {
            return percent ? value / 100 * full : value;
        }
    }

    private ColourFunctions() {
    }

    static Optional<Colour> parse(String name, String arguments) {
        List<Part> p = parts(arguments);
        if (p == null || p.size() < 3 || p.size() > 4) {
            return Optional.empty();
        }
        double alpha = p.size() == 4 ? p.get(3).of(1) : 1;
        Part a = p.get(0);
        Part b = p.get(1);
        Part c = p.get(2);
        return switch (name) {
            case "rgb", "rgba" -> Optional.of(Colour.of(a.of(255), b.of(255), c.of(255), alpha));
            case "hsl", "hsla" -> Optional.of(hsl(a.value(), unit(b.value() / 100), unit(c.value() / 100), alpha));
            case "hwb" -> Optional.of(hwb(a.value(), unit(b.value() / 100), unit(c.value() / 100), alpha));
            case "lab" -> Optional.of(lab(a.of(100), b.of(125), c.of(125), alpha));
            case "lch" -> Optional.of(lab(a.of(100), polar(b.of(150), c.value(), true),
                    polar(b.of(150), c.value(), false), alpha));
            case "oklab" -> Optional.of(oklab(a.of(1), b.of(0.4), c.of(0.4), alpha));
            case "oklch" -> Optional.of(oklab(a.of(1), polar(b.of(0.4), c.value(), true),
                    polar(b.of(0.4), c.value(), false), alpha));
            default -> Optional.empty();
        };
    }

    private static List<Part> parts(String text) {
        List<Part> parts = new ArrayList<>();
        Cursor c = new Cursor(text);
        c.spaces();
        while (!c.done()) {
            if (c.number()) {
                double value = c.value();
                if (c.take('%')) {
                    parts.add(new Part(value, true));
                } else {
                    double degrees = Angles.factor(c.unit());
                    if (Double.isNaN(degrees)) {
                        return null;
                    }
                    parts.add(new Part(value * degrees, false));
                }
            } else if (c.name().equals("none")) {
                parts.add(new Part(0, false));
            } else {
                return null;
            }
            if (!c.comma() && c.take('/')) {
                if (parts.size() != 3) {
                    return null;
                }
                c.spaces();
            }
        }
        return parts;
    }

    private static double unit(double v) {
        return Math.max(0, Math.min(1, v));
    }

    private static double polar(double chroma, double hue, boolean cos) {
        double h = Math.toRadians(hue);
        return chroma * (cos ? Math.cos(h) : Math.sin(h));
    }

    private static Colour hsl(double hue, double s, double l, double alpha) {
        return Colour.of(255 * hslChannel(hue, s, l, 0), 255 * hslChannel(hue, s, l, 8),
                255 * hslChannel(hue, s, l, 4), alpha);
    }

    private static double hslChannel(double hue, double s, double l, int n) {
        double h = ((hue % 360) + 360) % 360;
        double k = (n + h / 30) % 12;
        return l - s * Math.min(l, 1 - l) * Math.max(-1, Math.min(Math.min(k - 3, 9 - k), 1));
    }

    private static Colour hwb(double hue, double white, double black, double alpha) {
        if (white + black >= 1) {
            double grey = 255 * white / (white + black);
            return Colour.of(grey, grey, grey, alpha);
        }
        double k = 1 - white - black;
        return Colour.of(255 * (hslChannel(hue, 1, 0.5, 0) * k + white),
                255 * (hslChannel(hue, 1, 0.5, 8) * k + white), 255 * (hslChannel(hue, 1, 0.5, 4) * k + white), alpha);
    }

    private static Colour lab(double lightness, double a, double b, double alpha) {
        double l = Math.max(0, Math.min(100, lightness));
        double kappa = 24389.0 / 27;
        double epsilon = 216.0 / 24389;
        double fy = (l + 16) / 116;
        double fx = a / 500 + fy;
        double fz = fy - b / 200;
        double x = (fx * fx * fx > epsilon ? fx * fx * fx : (116 * fx - 16) / kappa) * 0.3457 / 0.3585;
        double y = l > kappa * epsilon ? fy * fy * fy : l / kappa;
        double z = (fz * fz * fz > epsilon ? fz * fz * fz : (116 * fz - 16) / kappa)
                * (1.0 - 0.3457 - 0.3585) / 0.3585;
        // Bradford D50 to D65, then to linear sRGB.
        double xd = 0.955473421488075 * x - 0.02309845494876471 * y + 0.06325924320057072 * z;
        double yd = -0.0283697093338637 * x + 1.0099953980813041 * y + 0.021041441191917323 * z;
        double zd = 0.012314014864481998 * x - 0.020507649298898964 * y + 1.330365926242124 * z;
        return linear(12831.0 / 3959 * xd - 329.0 / 214 * yd - 1974.0 / 3959 * zd,
                -851781.0 / 878810 * xd + 1648619.0 / 878810 * yd + 36519.0 / 878810 * zd,
                705.0 / 12673 * xd - 2585.0 / 12673 * yd + 705.0 / 667 * zd, alpha);
    }

    private static Colour oklab(double lightness, double a, double b, double alpha) {
        double light = Math.max(0, Math.min(1, lightness));
        double l = cube(light + 0.3963377773761749 * a + 0.2158037573099136 * b);
        double m = cube(light - 0.1055613458156586 * a - 0.0638541728258133 * b);
        double s = cube(light - 0.0894841775298119 * a - 1.2914855480194092 * b);
        // Ottosson's matrix from cone responses straight to linear sRGB.
        return linear(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
                -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
                -0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s, alpha);
    }

    private static double cube(double v) {
        return v * v * v;
    }

    private static Colour linear(double r, double g, double b, double alpha) {
        return Colour.of(255 * encode(r), 255 * encode(g), 255 * encode(b), alpha);
    }

    private static double encode(double v) {
        double a = Math.abs(v);
        double e = a > 0.0031308 ? 1.055 * Math.pow(a, 1 / 2.4) - 0.055 : 12.92 * a;
        return Math.copySign(e, v);
    }
}
