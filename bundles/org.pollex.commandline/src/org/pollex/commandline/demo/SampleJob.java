/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.pollex.commandline.demo.SampleDesigns.Sample;
import org.pollex.commandline.desk.CheckRun;
import org.pollex.commandline.desk.Desk;
import org.pollex.commandline.desk.OpenDesign;
import org.pollex.commandline.making.DesignMaker;
import org.pollex.commandline.report.CheckedDesign;
import org.pollex.commandline.report.FailOn;
import org.pollex.commandline.report.JsonReport;
import org.pollex.commandline.report.JunitReport;
import org.pollex.commandline.report.SarifReport;
import org.pollex.commandline.session.ExitCode;
import org.pollex.commandline.session.Refusal;
import org.pollex.commandline.session.SafeOutput;
import org.pollex.commandline.session.Session;
import org.pollex.model.design.Design;
import org.pollex.model.design.Mark;
import org.pollex.model.job.Job;
import org.pollex.model.job.JobDesign;
import org.pollex.model.job.JobFactory;
import org.pollex.model.job.Revision;
import org.pollex.model.job.Snapshot;
import org.pollex.model.job.Use;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.JobFolder;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.model.store.StoreException;
import org.pollex.output.page.PageSize;
import org.pollex.output.picture.MaterialPicture;
import org.pollex.output.picture.PictureOptions;
import org.pollex.output.picture.PngFile;
import org.pollex.output.proof.ProofPdf;

/** Writes the sample job and takes it from art to proof. */
public final class SampleJob {

    private static final String JOB = "summer-season.job";
    private static final String CLIENT = "Skerry Light Ferries";
    private static final int DPI = 600;
    private static final int WEEKS_TO_DUE = 6;

    private final Session session;

    /** Writes for a call. */
    public SampleJob(Session session) {
        this.session = session;
    }

    /** Writes the job into a folder that is not there, is empty, or holds this job already. */
    public ExitCode write(String text) throws Refusal {
        Path folder = session.file(text);
        check(folder);
        Session quiet = session.toldTo(new PrintStream(OutputStream.nullOutputStream()));
        for (String art : SampleDesigns.ART) {
            put(folder.resolve(ArtFiles.FOLDER).resolve(art), resource(art));
        }
        Map<Path, String> designs = new LinkedHashMap<>();
        for (Sample sample : SampleDesigns.ALL) {
            Path file = folder.resolve(sample.name() + ".design");
            new DesignMaker(quiet).make(file.toString(), sample.order(folder.resolve(ArtFiles.FOLDER).toString()));
            finish(file, sample);
            designs.put(file, session.shown(file));
        }
        job(folder);
        List<CheckedDesign> checked = new CheckRun(quiet).check(designs);
        reports(folder, checked);
        for (Path file : designs.keySet()) {
            outputs(folder, file);
        }
        new SampleAccount(session).tell(folder, checked);
        return ExitCode.CLEAN;
    }

    private void check(Path folder) throws Refusal {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new Refusal(ExitCode.NOT_WRITTEN, session.shown(folder) + ": this is a file; name a folder.");
        }
        if (Files.isDirectory(folder) && !Files.exists(folder.resolve(JOB))) {
            try (Stream<Path> inside = Files.list(folder)) {
                if (inside.findAny().isPresent()) {
                    throw new Refusal(ExitCode.NOT_WRITTEN, session.shown(folder)
                            + ": the folder is not empty; name a new one.");
                }
            } catch (IOException e) {
                throw new Refusal(ExitCode.NOT_WRITTEN, session.shown(folder) + ": the folder cannot be read ("
                        + SafeOutput.reason(e) + "); name another.", e);
            }
        }
    }

    private static byte[] resource(String name) {
        try (InputStream in = SampleJob.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("The art " + name + " of the sample job is not in its bundle.");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("The art " + name + " of the sample job cannot be read.", e);
        }
    }

    private void put(Path file, byte[] bytes) throws Refusal {
        SafeOutput.write(file, session.shown(file), bytes);
    }

    /** Names the design for people and moves its art, as a designer would who wants the anchor in the tip. */
    private static void finish(Path file, Sample sample) throws Refusal {
        try {
            Opened<Design> opened = ModelFiles.DESIGNS.open(file);
            opened.model().setName(sample.title());
            Mark mark = opened.model().getSides().get(0).getLayers().get(0).getMarks().get(0);
            mark.setY(mark.getY() + sample.down());
            ModelFiles.DESIGNS.save(opened);
        } catch (StoreException e) {
            throw new Refusal(Desk.code(e), e.getMessage(), e);
        }
    }

    private void job(Path folder) throws Refusal {
        Job job = JobFactory.eINSTANCE.createJob();
        job.setName("Summer season");
        job.setClient(CLIENT);
        job.setUse(Use.GIVEAWAY);
        job.setDue(session.today().plusWeeks(WEEKS_TO_DUE));
        job.setNote("An invented client; its art was drawn for this sample.");
        Instant when = session.today().atStartOfDay(ZoneOffset.UTC).toInstant();
        Revision revision = JobFactory.eINSTANCE.createRevision();
        revision.setNumber(1);
        revision.setWhen(when);
        revision.setWho("The studio");
        revision.setNote("First proof for the client.");
        int quantity = 0;
        try {
            for (Sample sample : SampleDesigns.ALL) {
                String path = sample.name() + ".design";
                JobDesign design = JobFactory.eINSTANCE.createJobDesign();
                design.setPath(path);
                design.setQuantity(sample.quantity());
                job.getDesigns().add(design);
                Snapshot snapshot = JobFactory.eINSTANCE.createSnapshot();
                snapshot.setPath(path);
                snapshot.setSha256(ArtFiles.sha256(folder.resolve(path)));
                revision.getSnapshots().add(snapshot);
                quantity += sample.quantity();
            }
            job.setQuantity(quantity);
            job.getRevisions().add(revision);
            ModelFiles.JOBS.replace(job, folder.resolve(JOB));
        } catch (StoreException e) {
            throw new Refusal(Desk.code(e), e.getMessage(), e);
        }
    }

    private void reports(Path folder, List<CheckedDesign> checked) throws Refusal {
        Path out = folder.resolve(JobFolder.OUTPUT);
        put(out.resolve("findings.json"), JsonReport.of(checked));
        put(out.resolve("findings.sarif"), SarifReport.of(session.suite(), checked));
        put(out.resolve("findings.xml"), JunitReport.of(session.suite(), FailOn.ERROR, checked));
    }

    private void outputs(Path folder, Path file) throws Refusal {
        Desk desk = new Desk(session);
        OpenDesign open = desk.open(file);
        String name = file.getFileName().toString().replace(".design", "");
        Path out = folder.resolve(JobFolder.OUTPUT);
        PictureOptions options = PictureOptions.of(DPI);
        put(out.resolve(name + ".png"), PngFile.bytes(MaterialPicture.of(open.printed(), options), DPI));
        put(out.resolve(name + "-zones.png"),
                PngFile.bytes(MaterialPicture.of(open.printed(), options.withZones(true)), DPI));
        put(out.resolve(name + "-proof.pdf"), ProofPdf.of(open.printed(), desk.findings(open),
                open.facts(session.today()), PageSize.A4));
    }
}
