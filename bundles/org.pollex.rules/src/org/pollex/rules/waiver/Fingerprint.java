/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.waiver;

import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.pollex.rules.Finding;

/**
 * What a finding is known by: its check and side are kept beside it, here are kind, region, the box of its place and
 * its measure. Two fingerprints are the same when the words agree, box edges lie within {@value #NEAR} mm and the
 * measure within {@value #ALIKE} of itself: rounding of a new flattening passes, a change of the design at the place
 * does not. Closeness is compared and not rounded to a grid, since a value on a grid line would jump.
 *
 * @param kind      finer kind of the finding
 * @param region    ink or mark
 * @param box       left, top, right, bottom of the place, mm; empty array when it has none
 * @param measured  measured value, or NaN
 */
record Fingerprint(String kind, String region, double[] box, double measured) {

    static final double NEAR = 0.05;
    static final double ALIKE = 0.05;
    private static final double LEAST = 0.005;
    private static final String VERSION = "1";

    static Fingerprint of(Finding finding) {
        Envelope box = finding.where().getEnvelopeInternal();
        return new Fingerprint(finding.kind(), finding.region(), box.isNull() ? new double[0]
                : new double[] {box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY()},
                finding.measured().orElse(Double.NaN));
    }

    /** Reads what {@link #text} wrote; empty when it is anything else. */
    static Optional<Fingerprint> parse(String text) {
        String[] parts = text.split(";", -1);
        if (parts.length != 5 || !parts[0].equals(VERSION)) {
            return Optional.empty();
        }
        try {
            String[] edges = parts[3].isEmpty() ? new String[0] : parts[3].split(" ");
            double[] box = new double[edges.length];
            for (int i = 0; i < edges.length; i++) {
                box[i] = Double.parseDouble(edges[i]);
            }
            return Optional.of(new Fingerprint(parts[1], parts[2], box,
                    parts[4].isEmpty() ? Double.NaN : Double.parseDouble(parts[4])));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** One line for files. */
    String text() {
        StringBuilder edges = new StringBuilder();
        for (double edge : box) {
            edges.append(edges.isEmpty() ? "" : " ").append(String.format(Locale.ROOT, "%.3f", edge));
        }
        return String.join(";", VERSION, word(kind), word(region), edges, Double.isNaN(measured) ? ""
                : String.format(Locale.ROOT, "%.5g", measured));
    }

    private static String word(String text) {
        return text.replace(';', ',');
    }

    boolean matches(Fingerprint other) {
        if (!word(kind).equals(word(other.kind)) || !word(region).equals(word(other.region))
                || box.length != other.box.length || Double.isNaN(measured) != Double.isNaN(other.measured)) {
            return false;
        }
        for (int i = 0; i < box.length; i++) {
            if (Math.abs(box[i] - other.box[i]) > NEAR) {
                return false;
            }
        }
        return Double.isNaN(measured)
                || Math.abs(measured - other.measured) <= Math.max(LEAST, ALIKE * Math.abs(measured));
    }
}
