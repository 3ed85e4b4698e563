/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.making.job.JobFacts;
import org.pollex.making.job.JobMaker;
import org.pollex.markers.StudioProject;
import org.pollex.model.job.Use;
import org.pollex.ui.jobs.tree.JobsView;

/** A job of a thousand designs is listed and opened without holding up the window. */
class ManyDesignsTest {

    private static final int DESIGNS = 1000;

    /** Work of the window's thread in one stretch, far over what is measured; all rows at once take more. */
    private static final long LONGEST_WORK_MILLIS = 500;

    /** By the clock, which other programs of a busy machine stretch. */
    private static final long LONGEST_MILLIS = 2000;

    @TempDir
    Path folder;

    private IFolder link;

    @AfterEach
    void clean() throws Exception {
        if (link != null) {
            StudioProject.open(new NullProgressMonitor()).remove(link, new NullProgressMonitor());
        }
        Window.page().hideView(Window.page().findView(JobsView.ID));
    }

    @Test
    void aThousandDesignsOpen() throws Exception {
        Window.fill();
        Path job = folder.resolve("brass");
        JobMaker.make(job, new JobFacts("Harbour brass", "Harbour Brass Band", Use.STAGE, DESIGNS,
                java.util.Optional.empty(), ""));
        byte[] one = Files.readAllBytes(Samples.ferry(job, "player"));
        for (int i = 1; i < DESIGNS; i++) {
            Files.write(job.resolve(String.format(Locale.ROOT, "player-%04d.design", i)), one);
        }
        boolean building = building(false);
        try {
            Watch watch = new Watch(Window.display());
            link(job);
            Window.page().showView(JobsView.ID);
            Window.until("the job is listed", () -> Arrays.stream(Widgets.tree(JobsView.ID).getItems())
                    .anyMatch(each -> each.getText().startsWith("Harbour brass")));
            Tree tree = Widgets.tree(JobsView.ID);
            TreeItem item = Arrays.stream(tree.getItems()).filter(each -> each.getText().startsWith("Harbour brass"))
                    .findFirst().orElseThrow();
            assertTrue(item.getItemCount() >= DESIGNS, item.getItemCount() + " lines below the job");
            Widgets.expand(item);
            Window.until("the first design is shown", () -> item.getItem(0).getText().startsWith("player"));
            Window.idle();
            tree.setTopItem(item.getItem(DESIGNS - 1));
            Window.until("the last design is shown", () -> item.getItem(DESIGNS - 1).getText().startsWith("player"));
            Window.idle();
            long longest = watch.stop();
            Picture.take(Window.display(), "manydesigns");
            System.out.println("Longest gap of the window's thread with " + DESIGNS + " designs: " + longest + " ms, "
                    + watch.work() + " ms of work");
            assertTrue(watch.work() < LONGEST_WORK_MILLIS, watch.work() + " ms of work at a stretch");
            assertTrue(longest < LONGEST_MILLIS, "the window stood still for " + longest + " ms");
        } finally {
            building(building);
        }
    }

    /** Linking walks the folder, so it is done where the suite does it: in the background. */
    private void link(Path job) {
        Job linking = Job.create("Linking", monitor -> {
            link = StudioProject.open(monitor).add(job, monitor);
        });
        linking.schedule();
        Window.until("the folder is linked", () -> linking.getState() == Job.NONE);
    }

    /** Checking a thousand designs takes minutes of both cores, and is not what is measured. */
    private static boolean building(boolean automatic) throws Exception {
        org.eclipse.core.resources.IWorkspace workspace = org.eclipse.core.resources.ResourcesPlugin.getWorkspace();
        org.eclipse.core.resources.IWorkspaceDescription description = workspace.getDescription();
        boolean before = description.isAutoBuilding();
        description.setAutoBuilding(automatic);
        workspace.setDescription(description);
        return before;
    }

    /** Asks the event loop for an answer all the time, and keeps the longest that it let wait. */
    private static final class Watch {

        private final AtomicBoolean on = new AtomicBoolean(true);
        private final AtomicLong longest = new AtomicLong();
        private final AtomicLong work = new AtomicLong();
        private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        private final Thread thread;

        Watch(Display display) {
            thread = new Thread(() -> {
                while (on.get()) {
                    long asked = System.nanoTime();
                    long before = threads.getThreadCpuTime(display.getThread().getId());
                    AtomicLong answered = new AtomicLong();
                    display.asyncExec(() -> answered.set(System.nanoTime()));
                    while (answered.get() == 0 && on.get()) {
                        pause(1);
                    }
                    long end = answered.get() == 0 ? System.nanoTime() : answered.get();
                    long worked = threads.getThreadCpuTime(display.getThread().getId()) - before;
                    work.accumulateAndGet(worked / 1_000_000, Math::max);
                    longest.accumulateAndGet((end - asked) / 1_000_000, Math::max);
                    pause(2);
                }
            }, "watch");
            thread.setDaemon(true);
            thread.start();
        }

        private static void pause(long millis) {
            try {
                Thread.sleep(millis);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        /** The most work between a question and its answer, milliseconds of the processor. */
        long work() {
            return work.get();
        }

        /** The longest wait, milliseconds. */
        long stop() throws InterruptedException {
            on.set(false);
            thread.join();
            return longest.get();
        }
    }
}
