/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.waiver;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.pollex.model.job.JobFactory;
import org.pollex.model.job.Waiver;
import org.pollex.rules.Finding;

/**
 * Waives findings and tells which findings of a later run are waived. A waiver holds for one place of one check on one
 * side of one design; it lasts through changes elsewhere and ends when the design changes at that place.
 */
public final class Waivers {

    private Waivers() {
    }

    /** What a finding is known by, one line of text. */
    public static String fingerprint(Finding finding) {
        return Fingerprint.of(finding).text();
    }

    /**
     * Writes a waiver for a finding.
     *
     * @param design  path of the design, relative to the job, with forward slashes
     * @param reason  why it is meant; not blank
     * @param who     who says so; not blank
     * @throws IllegalArgumentException when reason or name is blank, or the finding says that a check was not run
     */
    public static Waiver waive(Finding finding, String design, String reason, String who, Instant when) {
        if (reason.isBlank() || who.isBlank()) {
            throw new IllegalArgumentException("A waiver says why and who; fill in both.");
        }
        if (finding.kind().equals("not-run")) {
            throw new IllegalArgumentException("A check that was not run cannot be waived; cure its cause.");
        }
        Waiver waiver = JobFactory.eINSTANCE.createWaiver();
        waiver.setCheck(finding.check());
        waiver.setDesign(design);
        waiver.setSide(finding.side());
        waiver.setFingerprint(fingerprint(finding));
        waiver.setReason(reason);
        waiver.setWho(who);
        waiver.setWhen(when);
        return waiver;
    }

    /**
     * The same findings with those marked that a waiver of the job covers.
     *
     * @param design   path of the design, relative to the job, with forward slashes
     * @param waivers  waivers of the job; what cannot be understood covers nothing
     */
    public static List<Finding> apply(List<Finding> findings, String design, List<Waiver> waivers) {
        List<Waiver> mine = waivers.stream().filter(waiver -> design.equals(waiver.getDesign())).toList();
        return mine.isEmpty() ? List.copyOf(findings)
                : findings.stream().map(finding -> marked(finding, mine)).toList();
    }

    private static Finding marked(Finding finding, List<Waiver> waivers) {
        boolean waived = waivers.stream().anyMatch(waiver -> covers(waiver, finding));
        return waived == finding.waived() ? finding
                : new Finding(finding.check(), finding.kind(), finding.severity(), finding.side(), finding.region(),
                        finding.measured(), finding.limit(), finding.unit(), finding.where(), finding.message(),
                        finding.fixes(), waived);
    }

    private static boolean covers(Waiver waiver, Finding finding) {
        if (!finding.check().equals(waiver.getCheck()) || waiver.getFingerprint() == null
                || !finding.side().equals(waiver.getSide() == null ? "" : waiver.getSide())) {
            return false;
        }
        Optional<Fingerprint> known = Fingerprint.parse(waiver.getFingerprint());
        return known.isPresent() && known.get().matches(Fingerprint.of(finding));
    }
}
