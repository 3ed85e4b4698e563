/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.figure;

import java.util.Optional;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Display;
import org.locationtech.jts.geom.Geometry;

/**
 * The picture of the pattern on a face, made in the background and kept while neither changes. For the thread of the
 * window.
 */
public final class SurfaceImage {

    private final Display display;
    private final Runnable made;
    private Optional<Surface> surface = Optional.empty();
    private Geometry area;
    private Image image;
    private Drawing drawing;

    /** @param made  called in the thread of the window when the picture is there */
    SurfaceImage(Display display, Runnable made) {
        this.display = display;
        this.made = made;
    }

    /** The picture; empty on a plain material, and on a patterned one until it is made. */
    Optional<Image> image() {
        return Optional.ofNullable(image);
    }

    /**
     * Asks for the picture of a surface on an area; what was there before goes at once when it is another, and stays
     * until the new one is made where only something else shows through it.
     */
    void show(Optional<Surface> wanted, Geometry on) {
        if (wanted.equals(surface) && on == area) {
            return;
        }
        if (on == area && wanted.isPresent() && surface.filter(wanted.get()::samePattern).isPresent()) {
            stop();
        } else {
            dispose();
        }
        surface = wanted;
        area = on;
        wanted.ifPresent(each -> {
            drawing = new Drawing(each, on);
            drawing.schedule();
        });
    }

    /** Frees the picture and gives up the one that is being made. */
    void dispose() {
        stop();
        if (image != null) {
            image.dispose();
            image = null;
        }
        surface = Optional.empty();
        area = null;
    }

    private void stop() {
        if (drawing != null) {
            drawing.cancel();
            drawing = null;
        }
    }

    /** Makes a picture; its family is the class {@link SurfaceImage}. */
    private final class Drawing extends Job {

        private final Surface drawn;
        private final Geometry on;

        Drawing(Surface drawn, Geometry on) {
            super("Drawing the pattern of the material");
            this.drawn = drawn;
            this.on = on;
            setSystem(true);
        }

        @Override
        public boolean belongsTo(Object family) {
            return family == SurfaceImage.class;
        }

        @Override
        protected IStatus run(IProgressMonitor monitor) {
            ImageData data = drawn.picture(on);
            try {
                display.asyncExec(() -> take(data));
            } catch (SWTException e) {
                // the window has gone, and with it who wanted the picture
                return Status.CANCEL_STATUS;
            }
            return Status.OK_STATUS;
        }

        private void take(ImageData data) {
            if (drawing == this) {
                drawing = null;
                if (image != null) {
                    image.dispose();
                }
                image = new Image(display, data);
                made.run();
            }
        }
    }
}
