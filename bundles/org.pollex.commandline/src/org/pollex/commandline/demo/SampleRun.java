/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.demo;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pollex.commandline.desk.CheckRun;
import org.pollex.commandline.report.FailOn;
import org.pollex.commandline.report.JunitReport;
import org.pollex.commandline.session.About;
import org.pollex.making.sample.SampleJob;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.SafeOutput;
import org.pollex.making.session.Session;
import org.pollex.model.store.JobFolder;
import org.pollex.output.report.CheckedDesign;
import org.pollex.output.report.JsonReport;
import org.pollex.output.report.SarifReport;

/** Writes the sample job and takes it from art to proof, with findings as files. */
public final class SampleRun {

    private final Session session;

    /** Writes for a call. */
    public SampleRun(Session session) {
        this.session = session;
    }

    /** Writes the job into a folder that is not there, is empty, or holds this job already. */
    public ExitCode write(String text) throws Refusal {
        Path folder = session.file(text);
        Session quiet = session.toldTo(new PrintStream(OutputStream.nullOutputStream()));
        SampleJob job = new SampleJob(session);
        Map<Path, String> designs = new LinkedHashMap<>();
        for (Path design : job.write(folder, piece -> { })) {
            designs.put(design, session.shown(design));
        }
        List<CheckedDesign> checked = new CheckRun(quiet).check(designs);
        reports(folder, checked);
        for (Path file : designs.keySet()) {
            job.outputs(folder, file);
        }
        new SampleAccount(session).tell(folder, checked);
        return ExitCode.CLEAN;
    }

    private void reports(Path folder, List<CheckedDesign> checked) throws Refusal {
        Path out = folder.resolve(JobFolder.OUTPUT);
        put(out.resolve("findings.json"), JsonReport.of(checked));
        put(out.resolve("findings.sarif"), SarifReport.of(session.suite(), About.VERSION, checked));
        put(out.resolve("findings.xml"), JunitReport.of(session.suite(), FailOn.ERROR, checked));
    }

    private void put(Path file, byte[] bytes) throws Refusal {
        SafeOutput.write(file, session.shown(file), bytes);
    }
}
