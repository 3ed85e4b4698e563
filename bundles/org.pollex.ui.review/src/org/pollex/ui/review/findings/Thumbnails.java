/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.findings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Display;
import org.locationtech.jts.geom.Envelope;
import org.pollex.editor.session.Known;
import org.pollex.output.picture.PlacePicture;
import org.pollex.print.item.ItemFace;
import org.pollex.rules.Finding;
import org.pollex.ui.ScreenImages;

/** Small pictures of the places of findings, painted in the background. */
final class Thumbnails {

    static final int WIDTH = 60;
    static final int HEIGHT = 44;

    private static final double LEAST_MM = 5;
    private static final int MOST = 300;

    private final Display display;
    private final Runnable painted;
    private final Map<Finding, Image> images = new HashMap<>();
    private Job job;

    /** @param painted is run in the window's thread when new pictures are there */
    Thumbnails(Display display, Runnable painted) {
        this.display = display;
        this.painted = painted;
    }

    /** The picture of a finding; null until it is painted, or when it has no place. */
    Image of(Finding finding) {
        return images.get(finding);
    }

    /** Paints the places of a print; pictures of an earlier one go. */
    void show(Known known, int backdrop) {
        if (job != null) {
            job.cancel();
        }
        job = new Job("Painting places") {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                Map<Finding, ImageData> made = new HashMap<>();
                for (Finding each : known.findings().subList(0, Math.min(MOST, known.findings().size()))) {
                    if (monitor.isCanceled()) {
                        return Status.CANCEL_STATUS;
                    }
                    paint(known, each, backdrop, made);
                }
                if (!display.isDisposed()) {
                    display.asyncExec(() -> replace(made, monitor));
                }
                return Status.OK_STATUS;
            }
        };
        job.setSystem(true);
        job.setPriority(Job.DECORATE);
        job.schedule();
    }

    private static void paint(Known known, Finding finding, int backdrop, Map<Finding, ImageData> made) {
        ItemFace face = known.printed().item().face(finding.side()).orElse(null);
        if (face != null && !finding.where().isEmpty()) {
            Envelope window = PlacePicture.about(finding.where(), LEAST_MM);
            made.put(finding, ScreenImages.data(new PlacePicture(known.printed(), face).of(window.centre(),
                    HEIGHT / window.getHeight(), WIDTH, HEIGHT, backdrop, finding.where())));
        }
    }

    private void replace(Map<Finding, ImageData> made, IProgressMonitor monitor) {
        if (display.isDisposed() || monitor.isCanceled()) {
            return;
        }
        List<Image> old = new ArrayList<>(images.values());
        images.clear();
        made.forEach((finding, data) -> images.put(finding, new Image(display, data)));
        painted.run();
        old.forEach(Image::dispose);
    }

    void dispose() {
        if (job != null) {
            job.cancel();
        }
        images.values().forEach(Image::dispose);
        images.clear();
    }
}
