/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.ScrollBar;

/** Where a picture lies in a canvas: in the middle when it fits, else as the scroll bars and arrow keys moved it. */
final class Pan {

    private static final int STEP = 16;

    private final Canvas canvas;

    Pan(Canvas canvas) {
        this.canvas = canvas;
        if (canvas.getHorizontalBar() == null) {
            return;
        }
        canvas.getHorizontalBar().setVisible(false);
        canvas.getVerticalBar().setVisible(false);
        canvas.getHorizontalBar().addListener(SWT.Selection, event -> canvas.redraw());
        canvas.getVerticalBar().addListener(SWT.Selection, event -> canvas.redraw());
        canvas.addListener(SWT.KeyDown, event -> {
            switch (event.keyCode) {
                case SWT.ARROW_LEFT -> move(canvas.getHorizontalBar(), -STEP);
                case SWT.ARROW_RIGHT -> move(canvas.getHorizontalBar(), STEP);
                case SWT.ARROW_UP -> move(canvas.getVerticalBar(), -STEP);
                case SWT.ARROW_DOWN -> move(canvas.getVerticalBar(), STEP);
                default -> { }
            }
        });
    }

    private void move(ScrollBar bar, int by) {
        if (bar.isVisible()) {
            bar.setSelection(bar.getSelection() + by);
            canvas.redraw();
        }
    }

    /** Shows the bars that a picture of a size needs. */
    void fit(Point picture) {
        if (canvas.getHorizontalBar() != null) {
            Point size = canvas.getSize();
            fit(canvas.getHorizontalBar(), picture.x, size.x);
            fit(canvas.getVerticalBar(), picture.y, size.y);
        }
    }

    private static void fit(ScrollBar bar, int picture, int view) {
        boolean needed = picture > view;
        if (needed) {
            bar.setValues(Math.min(bar.getSelection(), picture - view), 0, picture, view, STEP, view);
        }
        if (bar.getVisible() != needed) {
            bar.setVisible(needed);
        }
    }

    /** Top left corner of a picture of a size. */
    Point origin(Point picture) {
        Rectangle area = canvas.getClientArea();
        return new Point(along(canvas.getHorizontalBar(), picture.x, area.width),
                along(canvas.getVerticalBar(), picture.y, area.height));
    }

    private static int along(ScrollBar bar, int picture, int view) {
        return bar != null && bar.getVisible() ? -bar.getSelection() : (view - picture) / 2;
    }
}
