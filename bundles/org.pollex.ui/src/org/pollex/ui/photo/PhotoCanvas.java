/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.photo;

import java.io.IOException;
import java.nio.file.Path;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.locationtech.jts.geom.Coordinate;
import org.pollex.ui.ScreenImages;

/**
 * A photograph in a control, with a line above it that says what to do next. It is chosen in a dialog or dropped, read
 * in the background, and never written to. Places count in pixels of the file, from its top left corner.
 */
public abstract class PhotoCanvas extends Canvas {

    private static final int GAP = 6;
    private static final int CROSS = 9;

    private Image photo;
    private Path file;
    private int width;
    private int height;
    private int asked;
    private int lineHeight = 16;
    private String trouble = "";

    /** @param name  what the control is called where it cannot be seen */
    protected PhotoCanvas(Composite parent, String name) {
        super(parent, SWT.BORDER | SWT.DOUBLE_BUFFERED);
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = name + ". " + asks();
            }
        });
        addPaintListener(event -> paint(event.gc));
        addListener(SWT.Resize, event -> redraw());
        addListener(SWT.Dispose, event -> drop());
        DropTarget target = new DropTarget(this, DND.DROP_COPY | DND.DROP_DEFAULT);
        target.setTransfer(FileTransfer.getInstance());
        target.addDropListener(new DropTargetAdapter() {
            @Override
            public void dragEnter(DropTargetEvent event) {
                event.detail = FileTransfer.getInstance().isSupportedType(event.currentDataType) ? DND.DROP_COPY
                        : DND.DROP_NONE;
            }

            @Override
            public void drop(DropTargetEvent event) {
                if (event.data instanceof String[] names && names.length > 0) {
                    open(Path.of(names[0]));
                }
            }
        });
    }

    /** Asks for a file and shows it. */
    public void choose(String title) {
        FileDialog dialog = new FileDialog(getShell(), SWT.OPEN | SWT.SHEET);
        dialog.setText(title);
        dialog.setFilterExtensions(new String[] {"*.jpg;*.jpeg;*.png;*.JPG;*.JPEG;*.PNG", "*.*"});
        String chosen = dialog.open();
        if (chosen != null) {
            open(Path.of(chosen));
        }
    }

    /** Shows a photograph, once it is read. */
    public void open(Path named) {
        int now = ++asked;
        trouble = "Reading the photograph\u2026";
        redraw();
        Display display = getDisplay();
        Job job = Job.create("Reading a photograph", monitor -> {
            PhotoFile read = null;
            try {
                read = PhotoFile.read(named);
            } catch (IOException | RuntimeException e) {
                // said in the control, whatever is wrong with the file
            }
            PhotoFile found = read;
            if (!display.isDisposed()) {
                display.asyncExec(() -> {
                    if (!isDisposed() && now == asked) {
                        show(named, found);
                    }
                });
            }
            return Status.OK_STATUS;
        });
        job.schedule();
    }

    private void show(Path named, PhotoFile found) {
        drop();
        file = found == null ? null : named;
        width = found == null ? 0 : found.width();
        height = found == null ? 0 : found.height();
        photo = found == null ? null : ScreenImages.image(getDisplay(), found.picture());
        trouble = found == null ? "This photograph cannot be read; choose a PNG or JPEG file." : "";
        opened();
        redraw();
    }

    private void drop() {
        if (photo != null) {
            photo.dispose();
            photo = null;
        }
    }

    /** Another photograph is shown, or none. */
    protected abstract void opened();

    /** What is to be done next, while a photograph is shown. */
    protected abstract String next();

    /** What is to be done before one is shown. */
    protected abstract String begin();

    /** Draws what was marked over the photograph. */
    protected abstract void marks(GC gc);

    /** What is asked for, or what is wrong. */
    public String asks() {
        return !trouble.isEmpty() ? trouble : photo == null ? begin() : next();
    }

    /** Whether a photograph is shown. */
    public boolean isShown() {
        return photo != null;
    }

    /** The file that is shown; null for none. */
    public Path file() {
        return file;
    }

    /** Width of the file, pixels. */
    public int pixelsAcross() {
        return width;
    }

    /** Height of the file, pixels. */
    public int pixelsDown() {
        return height;
    }

    /** Pixels of the screen for one of the file; a cross at the lower edge is seen whole. */
    protected final double zoom() {
        Rectangle area = getClientArea();
        return Math.min(area.width / (double) width, (area.height - top() - CROSS) / (double) height);
    }

    private int top() {
        return lineHeight + 2 * GAP;
    }

    /** Where a place of the file is on the control. */
    public final Point at(double x, double y) {
        double zoom = zoom();
        return new Point((int) Math.round(left() + x * zoom), (int) Math.round(top() + y * zoom));
    }

    private double left() {
        return (getClientArea().width - width * zoom()) / 2;
    }

    /** The place of the file under a point of the control, which may lie outside it. */
    protected final Coordinate place(int x, int y) {
        double zoom = zoom();
        return new Coordinate((x - left()) / zoom, (y - top()) / zoom);
    }

    private void paint(GC gc) {
        gc.setForeground(getForeground());
        lineHeight = gc.getFontMetrics().getHeight();
        gc.drawText(asks(), GAP, GAP, true);
        if (photo == null) {
            return;
        }
        Point from = at(0, 0);
        Point to = at(width, height);
        Rectangle all = photo.getBounds();
        gc.setInterpolation(SWT.HIGH);
        gc.drawImage(photo, 0, 0, all.width, all.height, from.x, from.y, to.x - from.x, to.y - from.y);
        marks(gc);
        if (isFocusControl()) {
            gc.setForeground(getForeground());
            gc.setLineWidth(1);
            gc.setLineDash(new int[] {2, 2});
            gc.drawRectangle(from.x, from.y, to.x - from.x - 1, to.y - from.y - 1);
            gc.setLineStyle(SWT.LINE_SOLID);
        }
    }

    /** A cross at a place of the file. */
    protected final void cross(GC gc, Coordinate at) {
        Point middle = at(at.x, at.y);
        seen(gc, middle.x - CROSS, middle.y, middle.x + CROSS, middle.y);
        seen(gc, middle.x, middle.y - CROSS, middle.x, middle.y + CROSS);
    }

    /** A line between two places of the file. */
    protected final void line(GC gc, Coordinate one, Coordinate other) {
        Point from = at(one.x, one.y);
        Point to = at(other.x, other.y);
        seen(gc, from.x, from.y, to.x, to.y);
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
