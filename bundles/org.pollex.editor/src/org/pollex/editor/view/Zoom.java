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
        Point view = manager.getViewport().getViewLocation();
        to(manager, old * factor, (view.x + pointer.x) / old, (view.y + pointer.y) / old, pointer);
    }

    /** Zooms, within the limits, so that a place (micrometres) lies under the pointer (pixels in the viewport). */
    static void to(ZoomManager manager, double wished, double x, double y, Point pointer) {
        double zoom = Math.max(LEAST, Math.min(MOST, wished));
        if (zoom == manager.getZoom()) {
            return;
        }
        manager.setZoom(zoom);
        manager.getViewport().validate();
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
