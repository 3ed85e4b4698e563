/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.proof;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.pollex.colour.Lab;
import org.pollex.output.drawing.HouseFont;
import org.pollex.output.page.Sheet;
import org.pollex.rules.Severity;

/** Colours, sizes and small pieces that the blocks of a proof share; the colours are those of all pages for clients. */
public final class ProofStyle {

    /** Text. */
    public static final int INK = 0x1c1f24;
    /** Text of less weight. */
    public static final int MUTED = 0x646b76;
    /** Thin lines. */
    public static final int HAIRLINE = 0xcfd3d9;
    static final int ACCENT = 0x0f5c63;
    /** The page. */
    public static final int PAPER = 0xffffff;
    static final int BACKDROP = 0xf1f2f4;

    static final double BODY = 7.4;
    static final double SMALL = 6.4;
    static final double HEADING = 4.6;

    private ProofStyle() {
    }

    /** A heading over a hairline; returns the y below it. */
    static double heading(Sheet sheet, double x, double y, double width, String text) {
        sheet.text(HouseFont.BOLD, 6.8, ACCENT, x, y + 2.4, text.toUpperCase(Locale.ROOT));
        sheet.draw(new Line2D.Double(x, y + 3.6, x + width, y + 3.6), HAIRLINE, 0.15);
        return y + HEADING + 0.9;
    }

    static int rgb(Severity severity) {
        return switch (severity) {
            case ERROR -> 0xb3261e;
            case WARNING -> 0xb86a00;
            case INFO -> 0x2b5f9e;
        };
    }

    static String words(Severity severity) {
        return switch (severity) {
            case ERROR -> "Must change";
            case WARNING -> "Please look";
            case INFO -> "Good to know";
        };
    }

    /** A disc with a number in it. */
    static void badge(Sheet sheet, double x, double y, double radius, int rgb, int number) {
        sheet.fill(new Ellipse2D.Double(x - radius - 0.25, y - radius - 0.25, 2 * radius + 0.5, 2 * radius + 0.5),
                PAPER);
        sheet.fill(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius), rgb);
        double points = (number > 99 ? 2.4 : number > 9 ? 3.1 : 3.6) * radius;
        sheet.textCentred(HouseFont.BOLD, points, PAPER, x, y + points * 0.36 * Sheet.POINT, Integer.toString(number));
    }

    static Rectangle2D box(double x, double y, double width, double height) {
        return new Rectangle2D.Double(x, y, width, height);
    }

    /** A measure with at most so many decimals and no trailing zeros. */
    static String number(double value, int decimals) {
        BigDecimal decimal = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return decimal.signum() == 0 ? "0" : decimal.toPlainString();
    }

    static String lab(Lab lab) {
        return "L* " + number(lab.l(), 0) + "  a* " + number(lab.a(), 0) + "  b* " + number(lab.b(), 0);
    }

    /** The name of a face with a capital letter. */
    static String title(String face) {
        return face.isEmpty() ? face : face.substring(0, 1).toUpperCase(Locale.ROOT) + face.substring(1);
    }
}
