/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.view;

import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.editparts.ZoomManager;

/** Zooming that keeps a place under the pointer, and fitting a box into the window. */
public final class Zoom {

    private static final double LEAST = 0.5 * Scale.PX_UM;
    private static final double MOST = 32 * Scale.PX_UM;
    private static final double FIT_MARGIN = 0.92;

    private Zoom() {
    }

    /** Multiplies the zoom; the place under {@code pointer} (pixels in the viewport) stays where it is. */
    public static void about(ZoomManager manager, double factor, Point pointer) {
        double old = manager.getZoom();
        double zoom = Math.max(LEAST, Math.min(MOST, old * factor));
        if (zoom == old) {
            return;
        }
        Viewport viewport = manager.getViewport();
        Point view = viewport.getViewLocation();
        double x = (view.x + pointer.x) / old;
        double y = (view.y + pointer.y) / old;
        manager.setZoom(zoom);
        viewport.validate();
        manager.setViewLocation(new Point((int) Math.rint(x * zoom - pointer.x),
                (int) Math.rint(y * zoom - pointer.y)));
    }

    /** Shows the box (micrometres) as large as it fits, in the middle. */
    public static void fit(ZoomManager manager, Rectangle box) {
        Viewport viewport = manager.getViewport();
        Rectangle client = viewport.getClientArea();
        if (client.width < 10 || client.height < 10 || box.isEmpty()) {
            return;
        }
        double zoom = FIT_MARGIN * Math.min((double) client.width / box.width, (double) client.height / box.height);
        zoom = Math.max(LEAST, Math.min(MOST, zoom));
        manager.setZoom(zoom);
        viewport.validate();
        reveal(manager, box);
    }

    /** Brings the middle of a box (micrometres) to the middle of the window. */
    public static void reveal(ZoomManager manager, Rectangle box) {
        Viewport viewport = manager.getViewport();
        double zoom = manager.getZoom();
        Rectangle client = viewport.getClientArea();
        double x = (box.x + box.width / 2.0) * zoom - client.width / 2.0;
        double y = (box.y + box.height / 2.0) * zoom - client.height / 2.0;
        manager.setViewLocation(new Point((int) Math.rint(x), (int) Math.rint(y)));
    }
}
