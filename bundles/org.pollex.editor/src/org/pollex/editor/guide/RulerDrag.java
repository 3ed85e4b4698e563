/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.guide;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/** Draws guides out of a ruler into the drawing: level ones from the upper ruler, upright ones from the left one. */
public final class RulerDrag {

    private final Control ruler;
    private final Control canvas;
    private final boolean across;
    private final GuideDrag drag;
    private final Listener escape = event -> {
        if (event.keyCode == SWT.ESC) {
            event.doit = false;
            event.type = SWT.None;
            end();
        }
    };

    private RulerDrag(Control ruler, Control canvas, boolean across, GuideDrag drag) {
        this.ruler = ruler;
        this.canvas = canvas;
        this.across = across;
        this.drag = drag;
    }

    /**
     * Makes a ruler give guides.
     *
     * @param across whether the ruler lies along the upper edge
     */
    public static void from(Control ruler, Control canvas, boolean across, GuideDrag drag) {
        RulerDrag made = new RulerDrag(ruler, canvas, across, drag);
        ruler.setCursor(ruler.getDisplay().getSystemCursor(across ? SWT.CURSOR_SIZENS : SWT.CURSOR_SIZEWE));
        ruler.setToolTipText("Drag from here into the drawing to make a guide.");
        ruler.addListener(SWT.MouseDown, made::pressed);
        ruler.addListener(SWT.MouseMove, made::moved);
        ruler.addListener(SWT.MouseUp, made::released);
        ruler.addListener(SWT.Dispose, event -> event.display.removeFilter(SWT.KeyDown, made.escape));
    }

    private void pressed(Event event) {
        if (event.button == 1) {
            Point at = there(event);
            drag.begin(!across, at.x, at.y);
            event.display.addFilter(SWT.KeyDown, escape);
        }
    }

    private void moved(Event event) {
        if (drag.lasts()) {
            Point at = there(event);
            drag.drag(at.x, at.y, (event.stateMask & SWT.ALT) != 0);
        }
    }

    private void released(Event event) {
        if (drag.lasts()) {
            Point at = there(event);
            event.display.removeFilter(SWT.KeyDown, escape);
            drag.drop(at.x, at.y, (event.stateMask & SWT.ALT) != 0);
        }
    }

    private void end() {
        ruler.getDisplay().removeFilter(SWT.KeyDown, escape);
        drag.cancel();
    }

    /** The pointer on the drawing surface. */
    private Point there(Event event) {
        return canvas.toControl(ruler.toDisplay(event.x, event.y));
    }
}
