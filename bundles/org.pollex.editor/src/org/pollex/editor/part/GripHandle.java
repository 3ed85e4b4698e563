/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.part;

import org.eclipse.draw2d.ColorConstants;
import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.Locator;
import org.eclipse.draw2d.PositionConstants;
import org.eclipse.draw2d.RelativeLocator;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.handles.SquareHandle;
import org.eclipse.swt.SWT;

/** A grip: four corners scale, the round one above the top edge turns. */
final class GripHandle extends SquareHandle {

    private static final int TURN_GAP = 22;
    private static final int SIZE = 9;

    private final boolean turning;
    private final int place;

    GripHandle(GraphicalEditPart owner, int place, boolean turning) {
        super(owner, turning ? new AboveLocator(owner.getFigure()) : new RelativeLocator(owner.getFigure(), place),
                turning ? Cursors.HAND : cursor(place));
        this.turning = turning;
        this.place = place;
        setPreferredSize(SIZE, SIZE);
    }

    private static org.eclipse.swt.graphics.Cursor cursor(int place) {
        return place == PositionConstants.NORTH_WEST || place == PositionConstants.SOUTH_EAST ? Cursors.SIZESE
                : Cursors.SIZENE;
    }

    @Override
    protected DragTracker createDragTracker() {
        return new GripTracker((MarkPart) getOwner(), place, turning);
    }

    @Override
    public void paintFigure(Graphics graphics) {
        Rectangle box = getBounds().getCopy().shrink(1, 1);
        graphics.setAntialias(SWT.ON);
        graphics.setBackgroundColor(ColorConstants.white);
        graphics.setForegroundColor(ColorConstants.black);
        if (turning) {
            graphics.fillOval(box);
            graphics.drawOval(box.getCopy().resize(-1, -1));
        } else {
            graphics.fillRectangle(box);
            graphics.drawRectangle(box.getCopy().resize(-1, -1));
        }
    }

    private record AboveLocator(IFigure owner) implements Locator {
        @Override
        public void relocate(IFigure target) {
            Rectangle box = owner.getBounds().getCopy();
            owner.translateToAbsolute(box);
            target.translateToRelative(box);
            target.setBounds(new Rectangle(box.x + box.width / 2 - SIZE / 2, box.y - TURN_GAP, SIZE, SIZE));
        }
    }
}
