/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.wizard;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.pollex.making.design.DesignMaker;
import org.pollex.making.design.Order;
import org.pollex.making.session.Refusal;
import org.pollex.output.picture.MaterialPicture;
import org.pollex.output.picture.PictureOptions;
import org.pollex.print.Printed;
import org.pollex.ui.ScreenImages;
import org.pollex.ui.jobs.work.Studio;
import org.pollex.ui.jobs.work.Work;

/** Shows what a design would look like, drawn in the background; a newer wish drops an older one. */
final class Preview {

    private static final double MM_PER_INCH = 25.4;
    private static final double SPACE = 4;
    /** Typing settles before anything is drawn, milliseconds. */
    private static final int SETTLE = 150;

    private final Canvas canvas;
    private final Consumer<String> told;
    private Image image;
    private int asked;
    private Job job;
    private String words = "";

    /** @param told  takes why nothing can be shown; an empty text when it can */
    Preview(Composite parent, Consumer<String> told) {
        this.told = told;
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
        canvas.addPaintListener(event -> paint(event.gc));
        canvas.addDisposeListener(event -> {
            stop();
            drop();
        });
    }

    Control control() {
        return canvas;
    }

    /** Draws what is chosen now. */
    void show(Choice choice) {
        stop();
        int now = ++asked;
        if (!choice.specified() || choice.job().isEmpty()) {
            return;
        }
        Order order = choice.order();
        Path file = choice.file();
        Point size = canvas.getSize();
        int backdrop = ScreenImages.rgb(canvas.getBackground());
        words = "Drawing\u2026";
        canvas.redraw();
        job = Job.create("Drawing the design", monitor -> {
            try {
                Printed printed = new DesignMaker(Studio.session(file.getParent())).preview(file, order);
                BufferedImage picture = MaterialPicture.of(printed, options(printed, size).on(backdrop));
                if (!monitor.isCanceled()) {
                    Work.later(() -> shown(now, Optional.of(picture), ""));
                }
            } catch (Refusal e) {
                Work.later(() -> shown(now, Optional.empty(), Work.sentence(e)));
            }
            return Status.OK_STATUS;
        });
        job.setSystem(true);
        job.schedule(SETTLE);
    }

    private static PictureOptions options(Printed printed, Point size) {
        int faces = printed.item().faces().size();
        double wide = size.x / (SPACE + faces * (printed.item().width() + SPACE));
        double tall = size.y / (printed.item().height() + 2 * SPACE);
        int dpi = (int) (Math.min(wide, tall) * MM_PER_INCH);
        return PictureOptions.of(Math.max(PictureOptions.DPI_MIN, Math.min(dpi, PictureOptions.DPI_MAX)));
    }

    private void shown(int ask, Optional<BufferedImage> picture, String trouble) {
        // one that had ended when it was cancelled does not know that it is late
        if (ask != asked || canvas.isDisposed()) {
            return;
        }
        drop();
        picture.ifPresent(each -> image = ScreenImages.image(canvas.getDisplay(), each));
        words = trouble.isEmpty() ? "" : "No picture";
        canvas.redraw();
        told.accept(trouble);
    }

    private void stop() {
        if (job != null) {
            job.cancel();
        }
    }

    private void drop() {
        if (image != null) {
            image.dispose();
            image = null;
        }
    }

    private void paint(GC gc) {
        Rectangle area = canvas.getClientArea();
        if (image != null) {
            Rectangle box = image.getBounds();
            gc.drawImage(image, (area.width - box.width) / 2, (area.height - box.height) / 2);
        }
        if (!words.isEmpty()) {
            gc.setForeground(canvas.getForeground());
            Point size = gc.textExtent(words);
            gc.drawText(words, (area.width - size.x) / 2, image == null ? (area.height - size.y) / 2
                    : area.height - size.y - 4, true);
        }
    }
}
