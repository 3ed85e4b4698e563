/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.pollex.commandline.desk.CheckRun;
import org.pollex.commandline.desk.DesignFinder;
import org.pollex.commandline.report.FailOn;
import org.pollex.commandline.report.JunitReport;
import org.pollex.commandline.report.Summary;
import org.pollex.commandline.session.About;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.SafeOutput;
import org.pollex.making.session.Session;
import org.pollex.output.report.CheckedDesign;
import org.pollex.output.report.JsonReport;
import org.pollex.output.report.SarifReport;
import org.pollex.rules.Suite;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Runs all checks over designs. */
@Command(name = "check", description = {"Runs all checks over designs.",
    "Waivers of the job that a design belongs to are honoured. One design that cannot be read never stops the rest."})
public final class CheckWord extends Word {

    @Parameters(arity = "1..*", paramLabel = "PATH",
            description = "designs, jobs, or folders whose whole tree is looked through")
    private List<String> paths;

    @Option(names = "--json", paramLabel = "F", description = "writes all findings as JSON")
    private String json;

    @Option(names = "--sarif", paramLabel = "F", description = "writes all findings as SARIF 2.1.0")
    private String sarif;

    @Option(names = "--junit", paramLabel = "F", description = "writes all findings as JUnit XML")
    private String junit;

    @Option(names = "--fail-on", paramLabel = "SEVERITY", defaultValue = "error",
            description = "ends with 1 from which severity on: error (the default), warning or never")
    private FailOn failOn;

    public CheckWord(Session session) {
        super(session);
    }

    @Override
    ExitCode work() throws Refusal {
        List<Optional<Path>> reports = new ArrayList<>();
        for (String name : new String[] {json, sarif, junit}) {
            reports.add(name == null ? Optional.empty() : Optional.of(session().file(name)));
        }
        DesignFinder finder = new DesignFinder(session());
        for (String path : paths) {
            finder.add(path);
        }
        List<CheckedDesign> designs = new CheckRun(session()).check(finder);
        Optional<Refusal> unwritten = write(designs, reports);
        Summary.of(designs).forEach(session()::say);
        if (unwritten.isPresent()) {
            throw unwritten.get();
        }
        if (finder.failed() || designs.stream().anyMatch(design -> !design.readable())) {
            return ExitCode.UNREADABLE;
        }
        return designs.stream().anyMatch(design -> failOn.fails(design)) ? ExitCode.FINDINGS : ExitCode.CLEAN;
    }

    /** Writes all reports that can be written; returns the first failure. */
    private Optional<Refusal> write(List<CheckedDesign> designs, List<Optional<Path>> files) {
        Suite suite = session().suite();
        List<Supplier<byte[]>> reports = List.of(() -> JsonReport.of(designs),
                () -> SarifReport.of(suite, About.VERSION, designs),
                () -> JunitReport.of(suite, failOn, designs));
        Optional<Refusal> first = Optional.empty();
        for (int i = 0; i < files.size(); i++) {
            if (files.get(i).isPresent()) {
                try {
                    Path file = files.get(i).get();
                    SafeOutput.write(file, session().shown(file), reports.get(i).get());
                } catch (Refusal e) {
                    first = first.or(() -> Optional.of(e));
                }
            }
        }
        return first;
    }
}
