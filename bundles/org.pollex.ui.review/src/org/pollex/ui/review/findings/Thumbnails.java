/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.findings;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Display;
import org.locationtech.jts.geom.Envelope;
import org.pollex.artwork.ArtException;
import org.pollex.model.store.StoreException;
import org.pollex.output.picture.PlacePicture;
import org.pollex.print.PrintException;
import org.pollex.print.Printed;
import org.pollex.print.item.ItemException;
import org.pollex.print.item.ItemFace;
import org.pollex.ui.ScreenImages;

/** Small pictures of the places of findings, painted in the background, one design after the other. */
final class Thumbnails {

    static final int WIDTH = 60;
    static final int HEIGHT = 44;

    private static final double LEAST_MM = 5;
    private static final int MOST = 300;

    /** Gives the print of a design, in the background. */
    interface Prints {

        /** The print; what it throws leaves the findings of that design without pictures. */
        Printed of(Path design) throws StoreException, PrintException, ItemException, ArtException;
    }

    private final Display display;
    private final Runnable painted;
    private final Map<Found, Image> images = new HashMap<>();
    private Job job;
    private Set<Found> wanted = Set.of();

    /** @param painted is run in the window's thread when new pictures are there */
    Thumbnails(Display display, Runnable painted) {
        this.display = display;
        this.painted = painted;
    }

    /** The picture of a finding; null until it is painted, or when it has no place. */
    Image of(Found found) {
        return images.get(found);
    }

    /** Paints the places of findings; pictures of others go. */
    void show(List<Found> findings, Prints prints, int backdrop) {
        if (job != null) {
            job.cancel();
        }
        List<Found> asked = findings.subList(0, Math.min(MOST, findings.size()));
        Map<Path, List<Found>> designs = new LinkedHashMap<>();
        asked.forEach(each -> designs.computeIfAbsent(each.design(), key -> new ArrayList<>()).add(each));
        Set<Found> now = new HashSet<>(asked);
        wanted = now;
        job = new Job("Painting places") {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                for (Map.Entry<Path, List<Found>> each : designs.entrySet()) {
                    Map<Found, ImageData> made = paint(prints, each.getKey(), each.getValue(), backdrop, monitor);
                    if (monitor.isCanceled()) {
                        return Status.CANCEL_STATUS;
                    }
                    later(() -> add(made), now);
                }
                later(() -> keep(now), now);
                return Status.OK_STATUS;
            }
        };
        job.setSystem(true);
        job.setPriority(Job.DECORATE);
        job.schedule();
    }

    private static Map<Found, ImageData> paint(Prints prints, Path design, List<Found> findings, int backdrop,
            IProgressMonitor monitor) {
        Map<Found, ImageData> made = new HashMap<>();
        try {
            Printed printed = prints.of(design);
            for (Found each : findings) {
                ItemFace face = printed.item().face(each.finding().side()).orElse(null);
                if (monitor.isCanceled()) {
                    return Map.of();
                }
                if (face != null && !each.finding().where().isEmpty()) {
                    Envelope window = PlacePicture.about(each.finding().where(), face, LEAST_MM);
                    made.put(each, ScreenImages.data(new PlacePicture(printed, face).of(window.centre(),
                            PlacePicture.scale(window, WIDTH, HEIGHT), WIDTH, HEIGHT, backdrop,
                            each.finding().where())));
                }
            }
        } catch (StoreException | PrintException | ItemException | ArtException e) {
            // its markers say why it cannot be printed now; the findings stand without pictures
            return made;
        }
        return made;
    }

    /** Runs in the window's thread, unless other findings are shown by then, even if that was after the job's end. */
    private void later(Runnable run, Set<Found> asked) {
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                if (!display.isDisposed() && wanted == asked) {
                    run.run();
                }
            });
        }
    }

    private void add(Map<Found, ImageData> made) {
        List<Image> old = new ArrayList<>();
        made.forEach((found, data) -> {
            Image before = images.put(found, new Image(display, data));
            if (before != null) {
                old.add(before);
            }
        });
        painted.run();
        old.forEach(Image::dispose);
    }

    private void keep(Set<Found> shown) {
        images.entrySet().removeIf(each -> {
            if (!shown.contains(each.getKey())) {
                each.getValue().dispose();
                return true;
            }
            return false;
        });
    }

    void dispose() {
        if (job != null) {
            job.cancel();
        }
        wanted = Set.of();
        images.values().forEach(Image::dispose);
        images.clear();
    }
}
