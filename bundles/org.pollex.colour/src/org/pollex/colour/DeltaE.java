/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour;

/**
 * How different two colours look. Both arguments are CIELAB under the same white; the order does not matter.
 * About 1 is just visible side by side.
 */
public final class DeltaE {

    private static final double POW25_7 = 6103515625.0;

    private DeltaE() {
    }

    /** CIE 1976: the distance in CIELAB. Overstates differences between saturated colours. */
    public static double cie76(Lab one, Lab two) {
        double dl = one.l() - two.l();
        double da = one.a() - two.a();
        double db = one.b() - two.b();
        return Math.sqrt(dl * dl + da * da + db * db);
    }

    /**
     * CIEDE2000 with all weights 1, as given by Sharma, Wu and Dalal, "The CIEDE2000 color-difference formula:
     * implementation notes, supplementary test data, and mathematical observations", Color Res. Appl. 30(1), 2005.
     * Meant for differences up to about 5; larger values only put colours in order.
     */
    public static double ciede2000(Lab one, Lab two) {
        double c7 = Math.pow((one.chroma() + two.chroma()) / 2, 7);
        double g = 0.5 * (1 - Math.sqrt(c7 / (c7 + POW25_7)));
        Lab p = new Lab(one.l(), one.a() * (1 + g), one.b());
        Lab q = new Lab(two.l(), two.a() * (1 + g), two.b());
        double cp = p.chroma();
        double cq = q.chroma();
        boolean grey = cp * cq == 0;

        double dHue = grey ? 0 : turn(q.hue() - p.hue());
        double dL = q.l() - p.l();
        double dC = cq - cp;
        double dH = 2 * Math.sqrt(cp * cq) * Math.sin(Math.toRadians(dHue) / 2);

        double l = (p.l() + q.l()) / 2;
        double c = (cp + cq) / 2;
        double h = grey ? p.hue() + q.hue() : meanHue(p.hue(), q.hue());
        double t = 1 - 0.17 * cos(h - 30) + 0.24 * cos(2 * h) + 0.32 * cos(3 * h + 6) - 0.20 * cos(4 * h - 63);
        double l50 = (l - 50) * (l - 50);
        double sl = 1 + 0.015 * l50 / Math.sqrt(20 + l50);
        double sc = 1 + 0.045 * c;
        double sh = 1 + 0.015 * c * t;
        double mean7 = Math.pow(c, 7);
        double away = (h - 275) / 25;
        double rt = -2 * Math.sqrt(mean7 / (mean7 + POW25_7)) * Math.sin(Math.toRadians(60 * Math.exp(-away * away)));

        double el = dL / sl;
        double ec = dC / sc;
        double eh = dH / sh;
        return Math.sqrt(Math.max(0, el * el + ec * ec + eh * eh + rt * ec * eh));
    }

    private static double turn(double difference) {
        return difference > 180 ? difference - 360 : difference < -180 ? difference + 360 : difference;
    }

    private static double meanHue(double one, double two) {
        double sum = one + two;
        if (Math.abs(one - two) <= 180) {
            return sum / 2;
        }
        return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }
}
