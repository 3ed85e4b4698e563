/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.retone;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.pollex.making.retone.RetoneDraft;
import org.pollex.making.retone.RetoneOrder;
import org.pollex.making.retone.Retoner;
import org.pollex.making.session.Refusal;
import org.pollex.output.picture.MaterialPicture;
import org.pollex.output.picture.PictureOptions;
import org.pollex.print.Printed;
import org.pollex.ui.ScreenImages;
import org.pollex.ui.Swatches;
import org.pollex.ui.jobs.work.Studio;
import org.pollex.ui.jobs.work.Work;

/** Two pictures side by side, drawn in the background: only the material exchanged, and re-toned. */
final class Pair {

    private static final double MM_PER_INCH = 25.4;
    private static final double SPACE = 4;
    /** A choice settles before anything is drawn, milliseconds. */
    private static final int SETTLE = 200;
    private static final int FLIPPED = 0;
    private static final int RETONED = 1;

    private final Consumer<Said> told;
    private final Canvas[] canvases = new Canvas[2];
    private final Image[] images = new Image[2];
    private final String[] words = {"", ""};
    private Job job;
    private Runnable again;
    private Point drawn;

    /**
     * How it stands.
     *
     * @param busy     whether pictures are drawn now
     * @param done     what re-toning did, one sentence each
     * @param trouble  why it cannot be re-toned so; empty when it can
     */
    record Said(boolean busy, List<String> done, String trouble) {
    }

    Pair(Composite parent, Consumer<Said> told) {
        this.told = told;
        Composite row = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(row);
        GridLayoutFactory.fillDefaults().numColumns(2).equalWidth(true).spacing(10, 4).applyTo(row);
        heading(row, "Only the material and ink exchanged");
        heading(row, "Re-toned");
        for (int i = 0; i < 2; i++) {
            int at = i;
            canvases[i] = new Canvas(row, SWT.DOUBLE_BUFFERED | SWT.BORDER);
            GridDataFactory.fillDefaults().grab(true, true).hint(260, 220).applyTo(canvases[i]);
            canvases[i].addPaintListener(event -> paint(at, event.gc));
        }
        canvases[FLIPPED].addListener(SWT.Resize, event -> {
            if (again != null && !canvases[FLIPPED].getSize().equals(drawn)) {
                again.run();
            }
        });
        canvases[RETONED].addDisposeListener(event -> {
            cancel();
            drop();
        });
    }

    /** A heading takes two lines where the letters are large, rather than push the second picture out. */
    private static void heading(Composite row, String words) {
        Label label = new Label(row, SWT.WRAP);
        label.setText(words);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.END).hint(200, SWT.DEFAULT)
                .applyTo(label);
    }

    private void drop() {
        for (int i = 0; i < 2; i++) {
            if (images[i] != null) {
                images[i].dispose();
                images[i] = null;
            }
        }
    }

    private void cancel() {
        if (job != null) {
            job.cancel();
            job = null;
        }
    }

    /** Stops drawing; a later wish draws again. */
    void stop() {
        if (job != null) {
            cancel();
            Arrays.fill(words, "Stopped");
            redraw();
            told.accept(new Said(false, List.of(), ""));
        }
    }

    private void redraw() {
        for (Canvas each : canvases) {
            each.redraw();
        }
    }

    /** Draws what is chosen now; a newer wish drops an older one. */
    void show(RetoneOrder order, Path folder) {
        cancel();
        again = () -> show(order, folder);
        drawn = canvases[FLIPPED].getSize();
        Arrays.fill(words, "Drawing\u2026");
        redraw();
        told.accept(new Said(true, List.of(), ""));
        Point size = drawn;
        int backdrop = ScreenImages.rgb(canvases[0].getBackground());
        job = Job.create("Drawing the re-toned design", monitor -> {
            Job mine = Job.getJobManager().currentJob();
            try {
                Retoner retoner = new Retoner(Studio.session(folder));
                BufferedImage flip = picture(retoner.flipped(order), size, backdrop);
                Work.later(() -> shown(mine, FLIPPED, flip));
                try (RetoneDraft draft = retoner.draft(order, monitor::isCanceled)) {
                    BufferedImage picture = picture(draft.printed(), size, backdrop);
                    Work.later(() -> shown(mine, RETONED, picture));
                    Work.later(() -> ended(mine, new Said(false, draft.told(), "")));
                }
            } catch (CancellationException e) {
                return Status.CANCEL_STATUS;
            } catch (Refusal e) {
                Work.later(() -> ended(mine, new Said(false, List.of(), Work.sentence(e))));
            }
            return Status.OK_STATUS;
        });
        job.setSystem(true);
        job.schedule(SETTLE);
    }

    /** The first face that prints anything, as large as there is room. */
    private static BufferedImage picture(Printed printed, Point size, int backdrop) {
        double wide = size.x / (printed.item().width() + SPACE);
        double tall = size.y / (printed.item().height() + SPACE);
        int dpi = (int) (Math.min(wide, tall) * MM_PER_INCH);
        PictureOptions options = PictureOptions.of(Math.max(PictureOptions.DPI_MIN,
                Math.min(dpi, PictureOptions.DPI_MAX))).on(backdrop);
        int face = 0;
        while (face + 1 < printed.item().faces().size() && printed.side(printed.item().faces().get(face).name())
                .map(each -> each.regions().isEmpty()).orElse(true)) {
            face++;
        }
        return Swatches.face(MaterialPicture.of(printed, options), printed.item(), options.scale(), face);
    }

    private void shown(Job by, int at, BufferedImage picture) {
        if (by != job || canvases[at].isDisposed()) {
            return;
        }
        Optional.ofNullable(images[at]).ifPresent(Image::dispose);
        images[at] = ScreenImages.image(canvases[at].getDisplay(), picture);
        words[at] = "";
        canvases[at].redraw();
    }

    private void ended(Job by, Said said) {
        if (by != job || canvases[RETONED].isDisposed()) {
            return;
        }
        job = null;
        if (!said.trouble().isEmpty()) {
            drop();
            Arrays.fill(words, "No picture");
            redraw();
        }
        told.accept(said);
    }

    private void paint(int at, GC gc) {
        Rectangle area = canvases[at].getClientArea();
        if (images[at] != null) {
            Rectangle box = images[at].getBounds();
            gc.drawImage(images[at], (area.width - box.width) / 2, (area.height - box.height) / 2);
        }
        if (!words[at].isEmpty()) {
            gc.setForeground(canvases[at].getForeground());
            Point size = gc.textExtent(words[at]);
            gc.drawText(words[at], (area.width - size.x) / 2, images[at] == null ? (area.height - size.y) / 2
                    : area.height - size.y - 4, true);
        }
    }
}
