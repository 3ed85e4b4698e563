/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import java.util.Optional;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.tools.PanningSelectionTool;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.MouseEvent;
import org.eclipse.swt.graphics.Cursor;
import org.pollex.editor.guide.GuideDrag;
import org.pollex.editor.part.MarkPart;
import org.pollex.editor.part.SidePart;
import org.pollex.editor.side.SidePage;

/** Selects and drags marks and guides; pans with the middle button, or with the space bar held down. */
final class PanTool extends PanningSelectionTool {

    private static final int MIDDLE = 2;

    private Point pressed;
    private Point viewed;
    private GuideDrag guide;
    private boolean overGuide;

    @Override
    public void mouseDown(MouseEvent event, EditPartViewer viewer) {
        if (event.button == MIDDLE && viewer.getControl() instanceof FigureCanvas canvas) {
            pressed = new Point(event.x, event.y);
            viewed = canvas.getViewport().getViewLocation();
            canvas.setCursor(canvas.getDisplay().getSystemCursor(SWT.CURSOR_SIZEALL));
        } else if (event.button != 1 || !grab(event, viewer)) {
            super.mouseDown(event, viewer);
        }
    }

    @Override
    public void mouseDrag(MouseEvent event, EditPartViewer viewer) {
        if (guide != null) {
            guide.drag(event.x, event.y, freely(event));
        } else if (pressed != null && viewer.getControl() instanceof FigureCanvas canvas) {
            canvas.scrollTo(viewed.x + pressed.x - event.x, viewed.y + pressed.y - event.y);
        } else {
            super.mouseDrag(event, viewer);
        }
    }

    @Override
    public void mouseUp(MouseEvent event, EditPartViewer viewer) {
        if (guide != null && event.button == 1) {
            guide.drop(event.x, event.y, freely(event));
            guide = null;
        } else if (pressed != null && event.button == MIDDLE) {
            pressed = null;
            viewer.getControl().setCursor(null);
        } else {
            super.mouseUp(event, viewer);
        }
    }

    /** Takes hold of a guide, unless a mark or a grip is in front of it or the space bar pans. */
    private boolean grab(MouseEvent event, EditPartViewer viewer) {
        Optional<GuideDrag> drag = drag(event, viewer);
        if (drag.isPresent() && !isInState(PAN)) {
            if (drag.get().grab(event.x, event.y)) {
                guide = drag.get();
                viewer.deselectAll();
                return true;
            }
        } else {
            page(viewer).ifPresent(page -> page.guideDrag().guides().choose(Optional.empty()));
        }
        return false;
    }

    private static Optional<GuideDrag> drag(MouseEvent event, EditPartViewer viewer) {
        Point at = new Point(event.x, event.y);
        boolean free = viewer instanceof GraphicalViewer drawing && drawing.findHandleAt(at) == null
                && !(viewer.findObjectAt(at) instanceof MarkPart);
        return free ? page(viewer).map(SidePage::guideDrag) : Optional.empty();
    }

    private static Optional<SidePage> page(EditPartViewer viewer) {
        return viewer.getContents() instanceof SidePart part && part.scene() instanceof SidePage page
                ? Optional.of(page) : Optional.empty();
    }

    private static boolean freely(MouseEvent event) {
        return (event.stateMask & SWT.ALT) != 0;
    }

    @Override
    public void mouseMove(MouseEvent event, EditPartViewer viewer) {
        super.mouseMove(event, viewer);
        if (isInState(STATE_INITIAL) && (overGuide
                || page(viewer).filter(page -> !page.guideDrag().guides().all().isEmpty()).isPresent())) {
            Optional<Cursor> cursor = drag(event, viewer).flatMap(each -> each.cursor(event.x, event.y));
            if (cursor.isPresent() || overGuide) {
                viewer.setCursor(cursor.orElse(null));
            }
            overGuide = cursor.isPresent();
        }
    }

    @Override
    public void keyDown(KeyEvent event, EditPartViewer viewer) {
        if (guide != null && event.keyCode == SWT.ESC) {
            guide.cancel();
            guide = null;
        } else {
            super.keyDown(event, viewer);
        }
    }
}
