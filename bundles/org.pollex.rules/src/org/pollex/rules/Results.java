/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/** The sink of one check on one design. Refuses nonsense at once, so that the fault shows where it happens. */
final class Results implements FindingSink {

    /** More findings than any reader could look through; a check that reaches it runs wild. */
    private static final int MOST = 20_000;

    private final String check;
    private final List<Finding> findings = new ArrayList<>();

    Results(String check) {
        this.check = check;
    }

    @Override
    public void add(Finding finding) {
        if (finding == null) {
            throw new NonsenseException("it reported nothing as a finding");
        }
        if (findings.size() == MOST) {
            throw new NonsenseException("it reported more than " + MOST + " findings");
        }
        String fault = fault(finding);
        if (!fault.isEmpty()) {
            throw new NonsenseException(fault);
        }
        findings.add(finding);
    }

    private String fault(Finding finding) {
        if (!check.equals(finding.check())) {
            return "it reported in the name of \"" + finding.check() + "\"";
        }
        if (finding.kind() == null || finding.severity() == null || finding.side() == null || finding.region() == null
                || finding.unit() == null || finding.measured() == null || finding.limit() == null) {
            return "it reported a finding with a part missing";
        }
        if (finding.message() == null || finding.message().isBlank()) {
            return "it reported a finding without a message";
        }
        if (!Double.isFinite(finding.measured().orElse(0)) || !Double.isFinite(finding.limit().orElse(0))) {
            return "it measured something that is no number";
        }
        return finite(finding.where()) ? "" : "it reported a place that is no place";
    }

    private static boolean finite(Geometry place) {
        if (place == null) {
            return false;
        }
        return place.isEmpty() || Double.isFinite(place.getEnvelopeInternal().getMinX())
                && Double.isFinite(place.getEnvelopeInternal().getMaxX())
                && Double.isFinite(place.getEnvelopeInternal().getMinY())
                && Double.isFinite(place.getEnvelopeInternal().getMaxY());
    }

    @Override
    public FindingDraft found(Severity severity, String kind) {
        return new FindingDraft(check, severity, kind, this::add);
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** A check that answers what no finding can be. */
    static final class NonsenseException extends RuntimeException {

        private static final long serialVersionUID = 1L;

        NonsenseException(String message) {
            super(message);
        }
    }
}
