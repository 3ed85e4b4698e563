/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.view;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.MouseWheelHandler;
import org.eclipse.gef.editparts.ZoomManager;
import org.eclipse.swt.widgets.Event;

/**
 * Zooms about the pointer by the wheel. While the pointer stays, the place under it is kept as it was first found:
 * the view moves by whole pixels, so the place would wander off step by step.
 */
public final class WheelZoom implements MouseWheelHandler {

    private static final double STEP = 1.25;

    private final ZoomManager manager;
    private Point pointer = new Point(-1, -1);
    private double x;
    private double y;
    private double left;

    /** Zooms what that manager shows. */
    public WheelZoom(ZoomManager manager) {
        this.manager = manager;
    }

    @Override
    public void handleMouseWheel(Event event, EditPartViewer viewer) {
        event.doit = false;
        Point now = new Point(event.x, event.y);
        if (!now.equals(pointer) || manager.getZoom() != left) {
            pointer = now;
            Point view = manager.getViewport().getViewLocation();
            x = (view.x + now.x) / manager.getZoom();
            y = (view.y + now.y) / manager.getZoom();
        }
        Zoom.to(manager, manager.getZoom() * (event.count > 0 ? STEP : 1 / STEP), x, y, now);
        left = manager.getZoom();
    }
}
