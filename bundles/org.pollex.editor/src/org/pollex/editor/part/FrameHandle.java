/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.part;

import org.eclipse.draw2d.AbstractBorder;
import org.eclipse.draw2d.ColorConstants;
import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Insets;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.handles.MoveHandle;
import org.eclipse.gef.tools.DragEditPartsTracker;

/** The frame round a selected mark, black dashes over white, which reads on any material. */
final class FrameHandle extends MoveHandle {

    FrameHandle(GraphicalEditPart part) {
        super(part);
        setDragTracker(new DragEditPartsTracker(part));
        setCursor(Cursors.SIZEALL);
    }

    @Override
    protected void initialize() {
        super.initialize();
        setBorder(new TwoTone());
    }

    private static final class TwoTone extends AbstractBorder {

        private static final int[] DASH = {5, 4};

        @Override
        public Insets getInsets(IFigure figure) {
            return new Insets(1);
        }

        @Override
        public void paint(IFigure figure, Graphics graphics, Insets insets) {
            Rectangle line = figure.getBounds().getCopy().resize(-1, -1);
            graphics.pushState();
            graphics.setLineWidth(1);
            graphics.setForegroundColor(ColorConstants.white);
            graphics.drawRectangle(line);
            graphics.setForegroundColor(ColorConstants.black);
            graphics.setLineDash(DASH);
            graphics.drawRectangle(line);
            graphics.popState();
        }
    }
}
