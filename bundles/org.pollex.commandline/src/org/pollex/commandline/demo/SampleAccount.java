/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.demo;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.pollex.commandline.report.Summary;
import org.pollex.making.sample.SampleDesigns.Sample;
import org.pollex.making.sample.SampleDesigns;
import org.pollex.making.session.Session;
import org.pollex.output.report.CheckedDesign;
import org.pollex.rules.Finding;

/** Tells what the sample job holds, what was found, and how to take each step by hand. */
final class SampleAccount {

    private static final int FINDINGS = 3;

    private final Session session;

    SampleAccount(Session session) {
        this.session = session;
    }

    void tell(Path folder, List<CheckedDesign> checked) {
        String shown = session.shown(folder);
        session.say("Skerry Light Ferries, an invented client: the job is in " + shown + ".");
        for (int i = 0; i < checked.size(); i++) {
            Sample sample = SampleDesigns.ALL.get(i);
            CheckedDesign design = checked.get(i);
            session.say("");
            session.say(sample.name() + ": " + sample.shows() + ".");
            session.say("  " + sample.product() + ", " + sample.material() + ", " + sample.method() + ": "
                    + (design.readable() ? Summary.counts(design) : design.error()));
            List<Finding> worst = design.findings().stream().sorted(Comparator.comparing(Finding::severity))
                    .limit(FINDINGS).toList();
            worst.forEach(finding -> session.say("  " + finding.severity().word() + ": " + finding.message()));
            if (design.findings().size() > FINDINGS) {
                session.say("  and " + (design.findings().size() - FINDINGS) + " more");
            }
        }
        session.say("");
        session.say("In " + shown + "/out: a proof, a picture and a picture with zones of each design, and findings "
                + "as JSON, SARIF and JUnit XML.");
        session.say("");
        session.say("Each step by hand:");
        step(SampleDesigns.ALL.get(0).words(quoted(shown)));
        String first = quoted(shown) + "/" + SampleDesigns.ALL.get(0).name();
        String second = quoted(shown) + "/" + SampleDesigns.ALL.get(1).name();
        step("check " + quoted(shown) + " --json findings.json");
        step("place " + second + ".design --turn best --out " + second + "-largest.design");
        step("picture " + first + ".design --png " + first + ".png --zones");
        step("proof " + first + ".design --pdf " + first + ".pdf");
    }

    private void step(String words) {
        session.say("  releng/studio " + words);
    }

    private static String quoted(String path) {
        return path.matches("[\\w./+-]+") ? path : "'" + path.replace("'", "'\\''") + "'";
    }
}
