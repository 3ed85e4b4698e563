/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.locationtech.jts.geom.Coordinate;
import org.pollex.print.wear.WornSample;

/**
 * A photograph of a worn sample in which four places are marked one after another: the left and the right edge of the
 * item where it is widest, its tip, and where half of the ink is gone. A mark can be dragged to a better place. The
 * width of the item is the scale. The photograph is read in the background and nothing of it is kept.
 */
public final class SamplePhoto extends Canvas {

    /** Photographs are shown no larger than this, so that a camera's pixels do not fill the memory. */
    private static final int LARGEST = 1600;
    private static final int NEAR = 12;
    private static final int CROSS = 9;
    private static final String[] PLACES = {"left edge of the item where it is widest",
        "right edge of the item where it is widest", "tip", "place where half of the ink is gone"};

    private final double width;
    private final Consumer<OptionalDouble> measured;
    private final Coordinate[] marks = new Coordinate[PLACES.length];
    private Image photo;
    private int dragged = -1;
    private String trouble = "";

    /**
     * @param width     of the item, mm
     * @param measured  told the distance from the tip whenever it changes; empty while places are missing
     */
    SamplePhoto(Composite parent, double width, Consumer<OptionalDouble> measured) {
        super(parent, SWT.BORDER | SWT.DOUBLE_BUFFERED);
        this.width = width;
        this.measured = measured;
        addPaintListener(event -> paint(event.gc));
        addListener(SWT.Resize, event -> redraw());
        addListener(SWT.MouseDown, event -> down(event.x, event.y));
        addListener(SWT.MouseMove, event -> {
            if (dragged >= 0) {
                mark(dragged, event.x, event.y);
            }
        });
        addListener(SWT.MouseUp, event -> dragged = -1);
        addListener(SWT.Dispose, event -> {
            if (photo != null) {
                photo.dispose();
            }
        });
    }

    /** Shows a photograph, once it is read. */
    public void open(String file) {
        trouble = "Reading the photograph\u2026";
        redraw();
        Job job = new Job("Reading a photograph") {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                ImageData read = null;
                String wrong = "";
                try {
                    read = smaller(new ImageData(file));
                } catch (SWTException | IllegalArgumentException e) {
                    wrong = "This photograph cannot be read; choose a PNG or JPEG file.";
                }
                ImageData data = read;
                String said = wrong;
                getDisplay().asyncExec(() -> show(data, said));
                return Status.OK_STATUS;
            }
        };
        job.schedule();
    }

    private static ImageData smaller(ImageData data) {
        double scale = Math.min(1, LARGEST / (double) Math.max(data.width, data.height));
        return scale == 1 ? data : data.scaledTo((int) (data.width * scale), (int) (data.height * scale));
    }

    private void show(ImageData data, String said) {
        if (isDisposed()) {
            return;
        }
        if (photo != null) {
            photo.dispose();
        }
        photo = data == null ? null : new Image(getDisplay(), data);
        trouble = said;
        Arrays.fill(marks, null);
        measured.accept(OptionalDouble.empty());
        redraw();
    }

    /** Whether a photograph is shown. */
    public boolean isShown() {
        return photo != null;
    }

    /** Where the next place is asked for, or what is wrong. */
    public String asks() {
        if (photo == null) {
            return trouble.isEmpty() ? "Open a photograph taken straight from above, or type the distance." : trouble;
        }
        for (int i = 0; i < PLACES.length; i++) {
            if (marks[i] == null) {
                return "Click the " + PLACES[i] + ".";
            }
        }
        return "Drag a cross to correct it.";
    }

    private double scale() {
        Point size = getSize();
        return Math.min(size.x / (double) photo.getBounds().width,
                (size.y - top()) / (double) photo.getBounds().height);
    }

    private int top() {
        return 26;
    }

    private void down(int x, int y) {
        if (photo == null) {
            return;
        }
        dragged = -1;
        for (int i = 0; i < marks.length; i++) {
            if (marks[i] != null && Math.hypot(marks[i].x * scale() - x, marks[i].y * scale() + top() - y) < NEAR) {
                dragged = i;
                return;
            }
        }
        for (int i = 0; i < marks.length; i++) {
            if (marks[i] == null) {
                mark(i, x, y);
                return;
            }
        }
    }

    private void mark(int i, int x, int y) {
        marks[i] = new Coordinate(x / scale(), (y - top()) / scale());
        measured.accept(distance());
        redraw();
    }

    private OptionalDouble distance() {
        for (Coordinate mark : marks) {
            if (mark == null) {
                return OptionalDouble.empty();
            }
        }
        try {
            return OptionalDouble.of(WornSample.measured(marks[0], marks[1], width, marks[2], marks[3]));
        } catch (IllegalArgumentException e) {
            trouble = e.getMessage();
            return OptionalDouble.empty();
        }
    }

    private void paint(GC gc) {
        gc.drawText(asks(), 6, 4, true);
        if (photo == null) {
            return;
        }
        double scale = scale();
        gc.setInterpolation(SWT.HIGH);
        gc.drawImage(photo, 0, 0, photo.getBounds().width, photo.getBounds().height, 0, top(),
                (int) (photo.getBounds().width * scale), (int) (photo.getBounds().height * scale));
        line(gc, 0, 1);
        line(gc, 2, 3);
        for (Coordinate mark : marks) {
            if (mark != null) {
                cross(gc, (int) Math.round(mark.x * scale), (int) Math.round(mark.y * scale) + top());
            }
        }
    }

    private void line(GC gc, int from, int to) {
        if (marks[from] != null && marks[to] != null) {
            double scale = scale();
            seen(gc, (int) (marks[from].x * scale), (int) (marks[from].y * scale) + top(),
                    (int) (marks[to].x * scale), (int) (marks[to].y * scale) + top());
        }
    }

    private void cross(GC gc, int x, int y) {
        seen(gc, x - CROSS, y, x + CROSS, y);
        seen(gc, x, y - CROSS, x, y + CROSS);
    }

    /** A black line with a white rim is seen on any photograph. */
    private void seen(GC gc, int x0, int y0, int x1, int y1) {
        gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_WHITE));
        gc.setLineWidth(4);
        gc.drawLine(x0, y0, x1, y1);
        gc.setForeground(getDisplay().getSystemColor(SWT.COLOR_BLACK));
        gc.setLineWidth(2);
        gc.drawLine(x0, y0, x1, y1);
    }
}
