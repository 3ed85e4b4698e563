/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures;

import java.awt.image.BufferedImage;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;
import org.pollex.editor.session.Known;
import org.pollex.ui.ActiveDesign;
import org.pollex.ui.ScreenImages;
import org.pollex.ui.ScreenScale;

/**
 * A view with a picture of the design in front, painted in the background whenever the print, the size or a choice of
 * the user changes; the newest wins.
 */
abstract class PictureView extends ViewPart {

    private static final long PAUSE = 60;

    private Canvas canvas;
    private Pan pan;
    private Image image;
    private ActiveDesign active;
    private Job job;
    private int backdrop;

    /** What is shown while no picture is there. */
    private static final String NONE = "Open a design to see it here.";

    @Override
    public final void createPartControl(Composite parent) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        Composite bar = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        controls(bar);
        if (bar.getChildren().length == 0) {
            bar.dispose();
        }
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | (scrolls() ? SWT.H_SCROLL | SWT.V_SCROLL : 0));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
        canvas.addPaintListener(event -> paint(event.gc));
        canvas.addListener(SWT.Resize, event -> repaint());
        pan = new Pan(canvas);
        ScreenScale.follow(canvas, this::follow);
        canvas.getAccessible().addAccessibleListener(new org.eclipse.swt.accessibility.AccessibleAdapter() {
            @Override
            public void getName(org.eclipse.swt.accessibility.AccessibleEvent event) {
                event.result = getPartName();
            }
        });
        active = new ActiveDesign(getSite().getPage(), this::follow);
        follow();
    }

    /** Whether the picture may be larger than the view and is then moved under it. */
    protected boolean scrolls() {
        return false;
    }

    /** Fills the bar above the picture. */
    protected abstract void controls(Composite bar);

    /** Paints; in the background. Null when there is nothing to show. */
    protected abstract BufferedImage picture(Known known, Point size, int backdrop);

    /** Another design is in front, or it changed. */
    protected void follow() {
        repaint();
    }

    /** The design in front. */
    protected final ActiveDesign active() {
        return active;
    }

    /** Where the picture is. */
    protected final Canvas canvas() {
        return canvas;
    }

    /** The control that shows the picture. */
    public final Canvas picture() {
        return canvas;
    }

    /** Where the picture's top left corner is in the view, pixels. */
    protected final Point origin() {
        return pan.origin(pictureSize());
    }

    /** Whether a picture is there. */
    public final boolean painted() {
        return image != null;
    }

    /** The size of the picture in pixels. */
    public final Point pictureSize() {
        return image == null ? new Point(0, 0) : new Point(image.getBounds().width, image.getBounds().height);
    }

    /** Paints the picture anew, soon. */
    protected final void repaint() {
        if (canvas == null || canvas.isDisposed() || active == null) {
            return;
        }
        Optional<Known> known = active.known();
        if (job != null) {
            job.cancel();
            job = null;
        }
        Point size = canvas.getSize();
        if (known.isEmpty() || size.x < 20 || size.y < 20) {
            replace(null);
            return;
        }
        backdrop = ScreenImages.rgb(canvas.getBackground());
        int ground = backdrop;
        job = new Job("Painting " + getPartName()) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                ImageData made;
                try {
                    BufferedImage picture = picture(known.get(), size, ground);
                    made = picture == null ? null : ScreenImages.data(picture);
                } catch (RuntimeException e) {
                    ILog.of(PictureView.class).error(getName(), e);
                    made = null;
                }
                ImageData data = made;
                if (!monitor.isCanceled() && !canvas.isDisposed()) {
                    canvas.getDisplay().asyncExec(() -> {
                        // one that had ended when it was cancelled does not know
                        if (!canvas.isDisposed() && job == this) {
                            replace(data);
                        }
                    });
                }
                return Status.OK_STATUS;
            }
        };
        job.setSystem(true);
        job.setPriority(Job.SHORT);
        job.schedule(PAUSE);
    }

    private void replace(ImageData data) {
        Image old = image;
        image = data == null ? null : new Image(canvas.getDisplay(), data);
        if (old != null) {
            old.dispose();
        }
        pan.fit(pictureSize());
        canvas.redraw();
    }

    private void paint(GC gc) {
        if (image != null && backdrop != ScreenImages.rgb(canvas.getBackground())) {
            // the window turned light or dark since
            repaint();
        }
        if (image == null) {
            gc.drawText(active == null || active.session().isEmpty() ? NONE : active.session().get().trouble()
                    .orElse("The design is being checked; its picture follows."), 10, 10, true);
            return;
        }
        Point origin = origin();
        gc.drawImage(image, origin.x, origin.y);
    }

    @Override
    public void setFocus() {
        canvas.setFocus();
    }

    @Override
    public void dispose() {
        if (job != null) {
            job.cancel();
            job = null;
        }
        if (active != null) {
            active.dispose();
        }
        if (image != null) {
            image.dispose();
            image = null;
        }
        super.dispose();
    }
}
