/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import java.nio.file.Path;
import java.time.LocalDate;
import org.pollex.making.desk.Desk;
import org.pollex.making.desk.OpenDesign;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.SafeOutput;
import org.pollex.making.session.Session;
import org.pollex.output.page.PageSize;
import org.pollex.output.proof.ProofPdf;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the client's proof. */
@Command(name = "proof", description = {"Writes the client's proof: one page with the design at true size, enlarged "
    + "with its zones, and on its material, its specification, inks and findings, and room for approval.",
    "Client, job and revision are those of the job in the folder of the design."})
public final class ProofWord extends Word {

    @Parameters(paramLabel = "D.design", description = "the design")
    private String design;

    @Option(names = "--pdf", required = true, paramLabel = "F", description = "file to write")
    private String pdf;

    @Option(names = "--page", paramLabel = "SIZE", defaultValue = "A4", description = "A4 (the default), A3 or letter")
    private String page;

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "day of the proof; today unless given")
    private LocalDate date;

    public ProofWord(Session session) {
        super(session);
    }

    @Override
    ExitCode work() throws Refusal {
        Path to = session().file(pdf);
        PageSize size = PageSize.named(page).orElseThrow(() -> Refusal.wrongUse(
                "There is no page size " + page + "; choose A4, A3 or letter."));
        Desk desk = new Desk(session());
        OpenDesign open = desk.open(session().file(design));
        byte[] bytes;
        try {
            LocalDate day = date == null ? session().today() : date;
            bytes = ProofPdf.of(open.printed(), desk.findings(open), open.facts(day), size);
        } catch (IllegalArgumentException e) {
            throw Refusal.wrongUse(e.getMessage());
        }
        SafeOutput.write(to, session().shown(to), bytes);
        session().say("Wrote " + session().shown(to) + ".");
        return ExitCode.CLEAN;
    }
}
