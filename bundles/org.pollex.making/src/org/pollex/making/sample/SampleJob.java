/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.sample;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.pollex.making.sample.SampleDesigns.Sample;
import org.pollex.making.desk.Desk;
import org.pollex.making.desk.OpenDesign;
import org.pollex.making.design.DesignMaker;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.SafeOutput;
import org.pollex.making.session.Session;
import org.pollex.making.session.TemporaryFolder;
import org.pollex.model.design.Design;
import org.pollex.model.design.Mark;
import org.pollex.model.job.Job;
import org.pollex.model.job.JobDesign;
import org.pollex.model.job.JobFactory;
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
import org.pollex.print.Printed;
import org.pollex.rules.review.JobReview;

/** Writes the sample job, and what is printed of it. */
public final class SampleJob {

    private static final String JOB = "summer-season.job";
    private static final String CLIENT = "Skerry Light Ferries";
    private static final int DPI = 600;
    private static final int WEEKS_TO_DUE = 6;

    private final Session session;

    /** Writes with the suite, the date and the folder of a call. */
    public SampleJob(Session session) {
        this.session = session;
    }

    /**
     * Writes the job with its art and designs into a folder that is not there, is empty, or holds this job already.
     *
     * @param before  told each piece before it is written; may refuse to go on
     * @return the designs, in the order of {@link SampleDesigns#ALL}
     */
    public List<Path> write(Path folder, Step before) throws Refusal {
        check(folder);
        Session quiet = session.toldTo(new PrintStream(OutputStream.nullOutputStream()));
        for (String art : SampleDesigns.ART) {
            before.next(art);
            put(folder.resolve(ArtFiles.FOLDER).resolve(art), resource(art));
        }
        List<Path> designs = new ArrayList<>();
        for (Sample sample : SampleDesigns.ALL) {
            before.next(sample.title());
            Path file = folder.resolve(sample.name() + ".design");
            new DesignMaker(quiet).make(file.toString(), sample.order(folder.resolve(ArtFiles.FOLDER).toString()));
            finish(file, sample);
            designs.add(file);
        }
        before.next(JOB);
        job(folder);
        return designs;
    }

    /**
     * The designs of the job as they print, in the order of {@link SampleDesigns#ALL}; nothing of it stays on the disk.
     *
     * @param before  as for {@link #write}
     */
    public List<Printed> printed(Step before) throws Refusal {
        Path folder = TemporaryFolder.make("pollex-sample");
        try {
            List<Printed> printed = new ArrayList<>();
            for (Path each : write(folder, before)) {
                printed.add(new Desk(session).open(each).printed());
            }
            return printed;
        } finally {
            TemporaryFolder.remove(folder);
        }
    }

    /** Hears of each piece of work before it begins. */
    @FunctionalInterface
    public interface Step {

        /**
         * The next piece.
         *
         * @throws Refusal to stop
         */
        void next(String piece) throws Refusal;
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
        int quantity = 0;
        try {
            for (Sample sample : SampleDesigns.ALL) {
                String path = sample.name() + ".design";
                JobDesign design = JobFactory.eINSTANCE.createJobDesign();
                design.setPath(path);
                design.setQuantity(sample.quantity());
                job.getDesigns().add(design);
                quantity += sample.quantity();
            }
            job.setQuantity(quantity);
            ModelFiles.JOBS.replace(job, folder.resolve(JOB));
            new JobReview(folder.resolve(JOB), Clock.fixed(when, ZoneOffset.UTC)).revise("The studio");
        } catch (StoreException e) {
            throw new Refusal(Desk.code(e), e.getMessage(), e);
        } catch (IOException e) {
            throw new Refusal(ExitCode.NOT_WRITTEN, session.shown(folder) + ": the revision cannot be written ("
                    + SafeOutput.reason(e) + "); check the folder and its permissions.", e);
        }
    }

    /** Writes a proof, a picture and a picture with zones of one design. */
    public void outputs(Path folder, Path file) throws Refusal {
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
