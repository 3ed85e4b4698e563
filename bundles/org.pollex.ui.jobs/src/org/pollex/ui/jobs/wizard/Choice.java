/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.wizard;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.Status;
import org.pollex.making.design.Order;
import org.pollex.making.job.JobMaker;
import org.pollex.markers.StudioSuite;
import org.pollex.model.catalogue.Method;
import org.pollex.model.store.StoreException;
import org.pollex.rules.Suite;
import org.pollex.ui.jobs.work.Work;

/** What was chosen so far for a new design. Belongs to the window's thread. */
final class Choice {

    private final List<Runnable> waiting = new ArrayList<>();
    private Suite suite;
    private String trouble = "";
    private Path job;
    private String product = "";
    private String material = "";
    private String method = "";
    private List<String> inks = List.of();
    private boolean inksFromArt = true;
    private Path front;
    private Path back;
    private boolean largest = true;
    private String name = "";

    /** Reads the catalogues that hold in the folder of the job, in the background. */
    void load(Path folder) {
        job = folder;
        suite = null;
        Job reading = Job.create("Reading the catalogues", monitor -> {
            try {
                Suite near = StudioSuite.get().near(folder);
                Work.later(() -> loaded(folder, near, ""));
            } catch (StoreException e) {
                Work.later(() -> loaded(folder, StudioSuite.get(), e.getMessage()));
            }
            return Status.OK_STATUS;
        });
        reading.setSystem(true);
        reading.schedule();
    }

    private void loaded(Path folder, Suite near, String why) {
        if (folder.equals(job)) {
            suite = near;
            trouble = why;
            waiting.forEach(Runnable::run);
        }
    }

    /** Runs something each time that catalogues were read. */
    void whenLoaded(Runnable run) {
        waiting.add(run);
        if (suite != null) {
            run.run();
        }
    }

    /** The catalogues; empty while they are read. */
    Optional<Suite> suite() {
        return Optional.ofNullable(suite);
    }

    /** Why the studio's own catalogues could not be read; empty when they could. */
    String trouble() {
        return trouble;
    }

    Optional<Path> job() {
        return Optional.ofNullable(job);
    }

    String product() {
        return product;
    }

    void product(String id) {
        product = id;
    }

    String material() {
        return material;
    }

    void material(String id) {
        material = id;
    }

    Optional<Method> method() {
        return suite().flatMap(each -> each.catalogues().method(method));
    }

    void method(String id) {
        method = id;
    }

    void inks(List<String> ids) {
        inks = List.copyOf(ids);
    }

    boolean inksFromArt() {
        return inksFromArt;
    }

    void inksFromArt(boolean from) {
        inksFromArt = from;
    }

    Optional<Path> front() {
        return Optional.ofNullable(front);
    }

    void front(Path file) {
        front = file;
    }

    Optional<Path> back() {
        return Optional.ofNullable(back);
    }

    void back(Path file) {
        back = file;
    }

    void largest(boolean fit) {
        largest = fit;
    }

    String name() {
        return name;
    }

    void name(String text) {
        name = text;
    }

    /** Whether product, material and method are known. */
    boolean specified() {
        return !product.isEmpty() && !material.isEmpty() && method().isPresent();
    }

    /** The order for the design. */
    Order order() {
        return new Order(product, material, method, inksFromArt || method().map(Method::isFullColour).orElse(false)
                ? List.of() : inks, front().map(Path::toString), back().map(Path::toString), largest, false);
    }

    /** Where the design will be. */
    Path file() {
        return job.resolve(JobMaker.fileName(name.isBlank() ? "design" : name) + ".design");
    }
}
