/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks.swatch;

import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.pollex.artwork.ArtException;
import org.pollex.colour.Lab;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.Material;
import org.pollex.print.PrintException;
import org.pollex.print.Printed;
import org.pollex.print.item.ItemException;
import org.pollex.print.stock.Stock;
import org.pollex.print.stock.SwatchShot;
import org.pollex.rules.Suite;
import org.pollex.ui.ScreenImages;
import org.pollex.ui.ScreenScale;
import org.pollex.ui.Swatches;

/**
 * An item of a material as a photograph shows it, at true size and enlarged. Drawn in the background; a newer wish
 * drops an older one.
 */
final class SwatchPreview {

    /** Gestures settle before anything is drawn, milliseconds. */
    private static final int SETTLE = 120;
    private static final double ROOM = 4;
    private static final int GAP = 6;

    /**
     * What the photograph shows.
     *
     * @param mean     mean colour of the stock; empty when it cannot be told
     * @param trouble  why it cannot be used, a sentence; empty when it can
     */
    record Seen(Optional<Lab> mean, String trouble) {
    }

    private record Drawn(Seen seen, BufferedImage actual, BufferedImage large) {
    }

    private final Canvas canvas;
    private final Suite suite;
    private final Consumer<Seen> told;
    private final Image[] images = new Image[2];
    /** A large photograph is read by one job at a time; those that wait and are dropped never begin. */
    private final ISchedulingRule oneAtATime = new ISchedulingRule() {
        @Override
        public boolean contains(ISchedulingRule rule) {
            return rule == this;
        }

        @Override
        public boolean isConflicting(ISchedulingRule rule) {
            return rule == this;
        }
    };
    private String words = "";
    private Job job;
    private Runnable again = () -> { };
    private int backdrop;

    /**
     * @param suite  has the products
     * @param told   takes what was seen
     */
    SwatchPreview(Composite parent, Suite suite, Consumer<Seen> told) {
        this.suite = suite;
        this.told = told;
        canvas = new Canvas(parent, SWT.BORDER | SWT.DOUBLE_BUFFERED);
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = "An item of the material";
            }
        });
        canvas.addPaintListener(event -> paint(event.gc));
        canvas.addDisposeListener(event -> {
            cancel();
            drop();
        });
    }

    Canvas control() {
        return canvas;
    }

    private void cancel() {
        if (job != null) {
            job.cancel();
            job = null;
        }
    }

    private void drop() {
        for (Image each : images) {
            if (each != null) {
                each.dispose();
            }
        }
        Arrays.fill(images, null);
    }

    /** Shows nothing, and says why. */
    void nothing(String sentence) {
        cancel();
        drop();
        again = () -> { };
        words = sentence;
        canvas.redraw();
    }

    /**
     * Draws what is chosen now.
     *
     * @param like  the material it is of; its id is not blank
     */
    void show(SwatchShot shot, Material like) {
        cancel();
        words = "Drawing\u2026";
        canvas.redraw();
        Display display = canvas.getDisplay();
        Rectangle area = canvas.getClientArea();
        double scale = ScreenScale.pixelsPerMm(canvas);
        backdrop = ScreenImages.rgb(canvas.getBackground());
        again = () -> show(shot, like);
        int ground = backdrop;
        job = Job.createSystem("Drawing a swatch", monitor -> {
            Job mine = Job.getJobManager().currentJob();
            Drawn drawn = draw(shot, like, area, scale, ground);
            if (!monitor.isCanceled() && !display.isDisposed()) {
                display.asyncExec(() -> shown(mine, drawn));
            }
            return Status.OK_STATUS;
        });
        job.setPriority(Job.SHORT);
        job.setRule(oneAtATime);
        job.schedule(SETTLE);
    }

    private Drawn draw(SwatchShot shot, Material like, Rectangle area, double scale, int backdrop) {
        Material material = shot.on(like);
        Stock stock = Stock.of(material);
        if (stock.problem().isPresent()) {
            return new Drawn(new Seen(Optional.empty(), stock.problem().get()), null, null);
        }
        Lab mean = stock.mean();
        material.setLab(colour(mean));
        try {
            Printed printed = Swatches.bare(suite.with((Catalogue) material.eContainer()),
                    suite.catalogues().products().get(0).getId(), material.getId());
            double wide = printed.item().width() + ROOM;
            double tall = printed.item().height() + ROOM;
            double large = Math.min((area.width - wide * scale - GAP) / wide, (area.height - GAP) / tall);
            return new Drawn(new Seen(Optional.of(mean), ""), Swatches.front(printed, scale, false, backdrop),
                    large > scale ? Swatches.front(printed, large, false, backdrop) : null);
        } catch (PrintException | ItemException | ArtException | IllegalArgumentException e) {
            return new Drawn(new Seen(Optional.of(mean), e.getMessage()), null, null);
        }
    }

    /** A colour as a catalogue keeps it, to a tenth. */
    static LabColour colour(Lab lab) {
        return new LabColour(tenth(Math.max(0, Math.min(100, lab.l()))), tenth(lab.a()), tenth(lab.b()));
    }

    private static double tenth(double value) {
        return Math.rint(10 * value) / 10;
    }

    private void shown(Job by, Drawn drawn) {
        if (by != job || canvas.isDisposed()) {
            return;
        }
        job = null;
        drop();
        images[0] = drawn.actual() == null ? null : ScreenImages.image(canvas.getDisplay(), drawn.actual());
        images[1] = drawn.large() == null ? null : ScreenImages.image(canvas.getDisplay(), drawn.large());
        words = drawn.actual() == null ? "No picture" : "";
        canvas.redraw();
        told.accept(drawn.seen());
    }

    private void paint(GC gc) {
        Rectangle area = canvas.getClientArea();
        if (ScreenImages.rgb(canvas.getBackground()) != backdrop) {
            // another theme was chosen
            backdrop = ScreenImages.rgb(canvas.getBackground());
            canvas.getDisplay().asyncExec(() -> {
                if (!canvas.isDisposed()) {
                    again.run();
                }
            });
        }
        int x = 0;
        for (Image each : images) {
            if (each != null) {
                Rectangle box = each.getBounds();
                gc.drawImage(each, each == images[0] ? 0 : area.width - box.width, (area.height - box.height) / 2);
                x = box.width;
            }
        }
        gc.setForeground(canvas.getForeground());
        if (!words.isEmpty()) {
            Point size = gc.textExtent(words);
            gc.drawText(words, Math.max(GAP, (area.width - size.x) / 2), x == 0 ? (area.height - size.y) / 2
                    : area.height - size.y - GAP, true);
        }
    }
}
