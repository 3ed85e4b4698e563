/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.review;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.pollex.model.job.Job;
import org.pollex.model.job.JobFactory;
import org.pollex.model.job.Revision;
import org.pollex.model.job.SignOff;
import org.pollex.model.job.Snapshot;
import org.pollex.model.job.Waiver;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.JobFolder;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.model.store.StoreException;
import org.pollex.rules.Finding;
import org.pollex.rules.waiver.Waivers;

/**
 * The review of one job, kept in its file. Every step reads the job, changes it and saves it whole, or leaves it as it
 * was.
 *
 * <p>A revision keeps a copy of every design of the job, unchanged from then on, in {@code revisions/N} beside the job.
 * The newest revision counts: without a sign-off and without a note it waits; with a note it was sent back; signed off,
 * its designs are locked until another revision is begun.
 */
public final class JobReview {

    /** Folder of the copies beside the job. */
    public static final String FOLDER = "revisions";

    private final Path job;
    private final Clock clock;

    /** @param job file of the job */
    public JobReview(Path job, Clock clock) {
        this.job = job.toAbsolutePath().normalize();
        this.clock = clock;
    }

    /** The review of the job that a design belongs to; empty when its folder has no job. */
    public static Optional<JobReview> of(Path design, Clock clock) throws StoreException {
        return JobFolder.of(design).job().map(file -> new JobReview(file, clock));
    }

    /** File of the job. */
    public Path job() {
        return job;
    }

    /** The job as it is on disk now. */
    public Job read() throws StoreException {
        return ModelFiles.JOBS.load(job);
    }

    private String path(Path design) {
        return job.getParent().relativize(design.toAbsolutePath().normalize()).toString().replace('\\', '/');
    }

    private void change(Consumer<Job> change) throws StoreException {
        Opened<Job> opened = ModelFiles.JOBS.open(job);
        change.accept(opened.model());
        ModelFiles.JOBS.save(opened);
    }

    /** Findings of a design with those marked that the job waives. */
    public List<Finding> apply(Path design, List<Finding> findings) throws StoreException {
        return Waivers.apply(findings, path(design), read().getWaivers());
    }

    /** The waiver that covers a finding. */
    public Optional<Waiver> waiver(Path design, Finding finding) throws StoreException {
        return covering(read(), path(design), finding);
    }

    private static Optional<Waiver> covering(Job job, String design, Finding finding) {
        return job.getWaivers().stream()
                .filter(each -> Waivers.apply(List.of(finding), design, List.of(each)).get(0).waived()).findFirst();
    }

    /**
     * Waives a finding; one that is waived already gets the new reason.
     *
     * @throws IllegalArgumentException when reason or name is blank
     */
    public void waive(Path design, Finding finding, String reason, String who) throws StoreException {
        Waiver waiver = Waivers.waive(finding, path(design), reason.strip(), who.strip(), clock.instant());
        change(model -> {
            covering(model, path(design), finding).ifPresent(model.getWaivers()::remove);
            model.getWaivers().add(waiver);
        });
    }

    /** Takes back the waiver of a finding. */
    public void takeBack(Path design, Finding finding) throws StoreException {
        change(model -> covering(model, path(design), finding).ifPresent(model.getWaivers()::remove));
    }

    /** The newest revision. */
    public static Optional<Revision> newest(Job job) {
        return job.getRevisions().stream().max(Comparator.comparingInt(Revision::getNumber));
    }

    /**
     * Makes a revision of all designs of the job as they are on disk.
     *
     * @return its number
     */
    public int revise(String who) throws StoreException, IOException {
        name(who);
        int number = newest(read()).map(Revision::getNumber).orElse(0) + 1;
        Revision revision = JobFactory.eINSTANCE.createRevision();
        revision.setNumber(number);
        revision.setWho(who.strip());
        revision.setWhen(clock.instant());
        Path folder = job.resolveSibling(FOLDER).resolve(Integer.toString(number));
        Files.createDirectories(folder);
        for (Path design : new JobFolder(job.getParent()).designs()) {
            byte[] bytes = Files.readAllBytes(design);
            Path copy = folder.resolve(design.getFileName());
            Path fresh = folder.resolve(design.getFileName() + ".new");
            Files.write(fresh, bytes);
            Files.move(fresh, copy, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            Snapshot snapshot = JobFactory.eINSTANCE.createSnapshot();
            snapshot.setPath(path(design));
            snapshot.setSha256(ArtFiles.sha256(bytes));
            revision.getSnapshots().add(snapshot);
        }
        change(model -> model.getRevisions().add(revision));
        return number;
    }

    /**
     * Sends the newest revision back.
     *
     * @throws IllegalArgumentException when note or name is blank
     * @throws IllegalStateException    when there is no revision that waits, or it holds no design
     */
    public void sendBack(String note, String who) throws StoreException {
        name(who);
        if (note.isBlank()) {
            throw new IllegalArgumentException("Say what should change before it is sent back.");
        }
        waiting(read());
        change(model -> waiting(model).setNote(who.strip() + ": " + note.strip()));
    }

    /**
     * Signs the newest revision off: the designs it holds are locked.
     *
     * @throws IllegalStateException when there is no revision that waits, it holds no design, a design changed since it
     *                               was made, or a copy it keeps is no longer whole
     */
    public void signOff(String who, String note) throws StoreException {
        name(who);
        Revision revision = waiting(read());
        for (Snapshot each : revision.getSnapshots()) {
            Path design = job.resolveSibling(each.getPath());
            if (!Files.exists(design) || !ArtFiles.sha256(design).equals(each.getSha256())) {
                throw new IllegalStateException(each.getPath() + " is no longer what revision " + revision.getNumber()
                        + " holds; make a new revision and sign that off.");
            }
        }
        List<String> broken = broken(revision);
        if (!broken.isEmpty()) {
            throw new IllegalStateException("The copy of " + broken.get(0) + " in revision " + revision.getNumber()
                    + " is missing or was altered; make a new revision and sign that off.");
        }
        SignOff sign = JobFactory.eINSTANCE.createSignOff();
        sign.setWho(who.strip());
        sign.setWhen(clock.instant());
        sign.setNote(note.isBlank() ? null : note.strip());
        change(model -> waiting(model).setSignOff(sign));
    }

    private static Revision waiting(Job job) {
        Revision revision = newest(job).orElseThrow(() -> new IllegalStateException(
                "The job has no revision yet; make one first."));
        if (revision.getSignOff() != null) {
            throw new IllegalStateException("Revision " + revision.getNumber() +
                    " is signed off; make a new one first.");
        }
        if (revision.getNote() != null && !revision.getNote().isBlank()) {
            throw new IllegalStateException("Revision " + revision.getNumber() +
                    " was sent back; make a new one first.");
        }
        if (revision.getSnapshots().isEmpty()) {
            throw new IllegalStateException("Revision " + revision.getNumber()
                    + " holds no design yet; make a revision when the designs are ready.");
        }
        return revision;
    }

    private static void name(String who) {
        if (who.isBlank()) {
            throw new IllegalArgumentException("Say who you are; the job keeps the name.");
        }
    }

    /** How far a design is with its review. */
    public ReviewState state(Path design) throws StoreException {
        return state(read(), design);
    }

    private ReviewState state(Job model, Path design) throws StoreException {
        String path = path(design);
        Optional<Revision> newest = newest(model);
        Optional<Snapshot> snapshot = newest.flatMap(revision -> revision.getSnapshots().stream()
                .filter(each -> path.equals(each.getPath())).findFirst());
        if (newest.isEmpty() || snapshot.isEmpty()) {
            return ReviewState.NEW;
        }
        if (newest.get().getSignOff() == null && newest.get().getNote() != null
                && !newest.get().getNote().isBlank()) {
            return ReviewState.SENT_BACK;
        }
        boolean same = Files.exists(design) && Objects.equals(snapshot.get().getSha256(), ArtFiles.sha256(design));
        return !same ? ReviewState.CHANGED : newest.get().getSignOff() != null ? ReviewState.SIGNED
                : ReviewState.WAITING;
    }

    /** Why a design may not be changed; empty when it may. */
    public Optional<String> locked(Path design) throws StoreException {
        Job model = read();
        return state(model, design) != ReviewState.SIGNED ? Optional.empty()
                : newest(model).map(each -> "Revision " + each.getNumber() + " was signed off by "
                        + each.getSignOff().getWho() + "; begin a new revision in the review to change the design.");
    }

    /**
     * Begins a new revision, empty for now, so that what was signed off may be changed again.
     *
     * @throws IllegalStateException when the newest revision is not signed off: nothing is locked then, and a revision
     *                               that waits must not be passed over
     */
    public int begin(String who) throws StoreException {
        name(who);
        int number = newest(read()).map(Revision::getNumber).orElse(0) + 1;
        Revision revision = JobFactory.eINSTANCE.createRevision();
        revision.setNumber(number);
        revision.setWho(who.strip());
        revision.setWhen(clock.instant());
        signed(read());
        change(model -> {
            signed(model);
            model.getRevisions().add(revision);
        });
        return number;
    }

    private static void signed(Job job) {
        if (newest(job).map(Revision::getSignOff).isEmpty()) {
            throw new IllegalStateException("Nothing is signed off, so the designs may be changed as they are.");
        }
    }

    /** The copies of a revision that are missing or no longer what was kept, by path; empty when all are whole. */
    public List<String> broken(Revision revision) {
        Path folder = job.resolveSibling(FOLDER).resolve(Integer.toString(revision.getNumber()));
        return revision.getSnapshots().stream().filter(each -> {
            try {
                Path copy = folder.resolve(Path.of(each.getPath()).getFileName());
                return !Files.exists(copy) || !ArtFiles.sha256(copy).equals(each.getSha256());
            } catch (StoreException e) {
                return true;
            }
        }).map(Snapshot::getPath).toList();
    }
}
