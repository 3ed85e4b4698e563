/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.tools.PanningSelectionTool;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.MouseEvent;

/** Selects and drags; pans with the middle button, or with the space bar held down. */
final class PanTool extends PanningSelectionTool {

    private static final int MIDDLE = 2;

    private Point pressed;
    private Point viewed;

    @Override
    public void mouseDown(MouseEvent event, EditPartViewer viewer) {
        if (event.button == MIDDLE && viewer.getControl() instanceof FigureCanvas canvas) {
            pressed = new Point(event.x, event.y);
            viewed = canvas.getViewport().getViewLocation();
            canvas.setCursor(canvas.getDisplay().getSystemCursor(SWT.CURSOR_SIZEALL));
        } else {
            super.mouseDown(event, viewer);
        }
    }

    @Override
    public void mouseDrag(MouseEvent event, EditPartViewer viewer) {
        if (pressed != null && viewer.getControl() instanceof FigureCanvas canvas) {
            canvas.scrollTo(viewed.x + pressed.x - event.x, viewed.y + pressed.y - event.y);
        } else {
            super.mouseDrag(event, viewer);
        }
    }

    @Override
    public void mouseUp(MouseEvent event, EditPartViewer viewer) {
        if (pressed != null && event.button == MIDDLE) {
            pressed = null;
            viewer.getControl().setCursor(null);
        } else {
            super.mouseUp(event, viewer);
        }
    }
}
