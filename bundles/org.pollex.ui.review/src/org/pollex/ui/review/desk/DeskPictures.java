/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.desk;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.IntConsumer;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.pollex.artwork.ArtException;
import org.pollex.model.store.StoreException;
import org.pollex.output.picture.PlacePicture;
import org.pollex.print.PrintException;
import org.pollex.print.Printed;
import org.pollex.print.item.ItemException;
import org.pollex.print.item.ItemFace;
import org.pollex.ui.ScreenImages;
import org.pollex.ui.ScreenScale;
import org.pollex.ui.review.SavedPrint;

/** The two pictures of a finding: its place enlarged, and the whole face at true size. Painted in the background. */
final class DeskPictures {

    private static final double LEAST_MM = 6;
    private static final double MARGIN_MM = 2;

    private final Canvas large;
    private final Canvas actual;
    private final IntConsumer actualHeight;
    private Image largeImage;
    private Image actualImage;
    private Job job;
    private Path printedFile;
    private long printedTime;
    private Printed printed;
    private String trouble = "";
    private Entry shown;
    private int backdrop;

    /** @param actualHeight  is told how high the picture at true size is, pixels */
    DeskPictures(Composite largeParent, Composite actualParent, IntConsumer actualHeight) {
        this.actualHeight = actualHeight;
        large = canvas(largeParent, "The place enlarged", () -> largeImage);
        actual = canvas(actualParent, "The item at true size", () -> actualImage);
        ScreenScale.follow(actual, () -> show(shown));
    }

    private Canvas canvas(Composite parent, String name, java.util.function.Supplier<Image> image) {
        Canvas canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED);
        canvas.addPaintListener(event -> paint(canvas, event.gc, image.get()));
        canvas.getAccessible().addAccessibleListener(new org.eclipse.swt.accessibility.AccessibleAdapter() {
            @Override
            public void getName(org.eclipse.swt.accessibility.AccessibleEvent event) {
                event.result = name;
            }
        });
        canvas.addDisposeListener(event -> {
            if (job != null) {
                job.cancel();
            }
            Image last = image.get();
            if (last != null && !last.isDisposed()) {
                last.dispose();
            }
        });
        return canvas;
    }

    private void paint(Canvas canvas, GC gc, Image image) {
        Point size = canvas.getSize();
        if (image != null && shown != null && backdrop != ScreenImages.rgb(large.getBackground())) {
            // the window turned light or dark since
            show(shown);
        }
        if (image != null) {
            gc.drawImage(image, (size.x - image.getBounds().width) / 2, (size.y - image.getBounds().height) / 2);
        } else if (canvas == large && !trouble.isEmpty()) {
            gc.drawText(trouble, 12, 12, true);
        }
    }

    Canvas large() {
        return large;
    }

    Canvas actual() {
        return actual;
    }

    /** Whether both pictures are there. */
    boolean painted() {
        return largeImage != null && actualImage != null;
    }

    /** Shows a finding; nothing for null. */
    void show(Entry entry) {
        if (job != null) {
            job.cancel();
            job = null;
        }
        shown = entry;
        if (entry == null) {
            replace(null, null, "");
            return;
        }
        Point size = large.getSize();
        int width = Math.max(120, size.x);
        int height = Math.max(120, size.y);
        backdrop = ScreenImages.rgb(large.getBackground());
        int ground = backdrop;
        double trueScale = ScreenScale.pixelsPerMm(large);
        Path path = entry.path();
        job = new Job("Painting a place") {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                String why = "";
                ImageData[] made = new ImageData[2];
                try {
                    Printed print = print(path);
                    Optional<ItemFace> face = print.item().face(entry.finding().side())
                            .or(() -> print.item().faces().stream().findFirst());
                    if (face.isPresent()) {
                        PlacePicture picture = new PlacePicture(print, face.get());
                        Envelope window = PlacePicture.about(entry.finding().where(), face.get(), LEAST_MM);
                        made[0] = ScreenImages.data(picture.of(window.centre(), PlacePicture.scale(window, width,
                                height), width, height, ground, entry.finding().where()));
                        made[1] = ScreenImages.data(whole(picture, face.get(), trueScale, ground, entry));
                    }
                } catch (StoreException | PrintException | ItemException | ArtException e) {
                    why = e.getMessage();
                }
                String sentence = why;
                if (!monitor.isCanceled() && !large.isDisposed()) {
                    large.getDisplay().asyncExec(() -> {
                        // one that had ended when it was cancelled does not know
                        if (!large.isDisposed() && job == this) {
                            replace(made[0], made[1], sentence);
                        }
                    });
                }
                return Status.OK_STATUS;
            }
        };
        job.setSystem(true);
        job.schedule();
    }

    private static BufferedImage whole(PlacePicture picture, ItemFace face, double scale, int backdrop, Entry entry) {
        Envelope box = new Envelope(face.area().getEnvelopeInternal());
        box.expandBy(MARGIN_MM);
        Coordinate middle = box.centre();
        return picture.of(middle, scale, (int) Math.ceil(box.getWidth() * scale),
                (int) Math.ceil(box.getHeight() * scale), backdrop, entry.finding().where());
    }

    private synchronized Printed print(Path path) throws StoreException, PrintException, ItemException, ArtException {
        long time = path.toFile().lastModified();
        if (printed == null || !path.equals(printedFile) || time != printedTime) {
            printed = SavedPrint.of(path);
            printedFile = path;
            printedTime = time;
        }
        return printed;
    }

    private void replace(ImageData place, ImageData whole, String why) {
        Image oldLarge = largeImage;
        Image oldActual = actualImage;
        largeImage = place == null ? null : new Image(large.getDisplay(), place);
        actualImage = whole == null ? null : new Image(large.getDisplay(), whole);
        trouble = why;
        if (oldLarge != null) {
            oldLarge.dispose();
        }
        if (oldActual != null) {
            oldActual.dispose();
        }
        if (whole != null) {
            actualHeight.accept(whole.height);
        }
        large.redraw();
        actual.redraw();
    }
}
