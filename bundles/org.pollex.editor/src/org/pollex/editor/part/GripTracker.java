/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.part;

import java.util.List;
import org.eclipse.draw2d.PositionConstants;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.PrecisionPoint;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.Request;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.tools.SimpleDragTracker;
import org.eclipse.swt.SWT;
import org.pollex.editor.view.Scale;

/**
 * Follows a grip. Scaling is uniform about the opposite corner, about the middle with the Alt key; turning is about the
 * middle of the mark, in steps of 15 degrees with the Shift key.
 */
final class GripTracker extends SimpleDragTracker {

    private static final double STEP = 15;
    private static final double LEAST_FACTOR = 0.02;
    private static final double MOST_FACTOR = 50;

    private final MarkPart part;
    private final int place;
    private final boolean turning;
    private double fixedX;
    private double fixedY;
    private double middleX;
    private double middleY;

    GripTracker(MarkPart part, int place, boolean turning) {
        this.part = part;
        this.place = place;
        this.turning = turning;
    }

    @Override
    protected String getCommandName() {
        return PoseRequest.TYPE;
    }

    @Override
    protected boolean handleButtonDown(int button) {
        Rectangle box = part.getFigure().getBounds();
        boolean west = (place & PositionConstants.WEST) != 0;
        boolean north = (place & PositionConstants.NORTH) != 0;
        fixedX = west ? box.right() : box.x;
        fixedY = north ? box.bottom() : box.y;
        middleX = part.mark().getX() * Scale.UM;
        middleY = part.mark().getY() * Scale.UM;
        return super.handleButtonDown(button);
    }

    @Override
    protected List<?> createOperationSet() {
        return List.of(part);
    }

    @Override
    protected Request createSourceRequest() {
        return new PoseRequest(turning);
    }

    @Override
    protected void updateSourceRequest() {
        super.updateSourceRequest();
        PoseRequest request = (PoseRequest) getSourceRequest();
        boolean about = turning || getCurrentInput().isAltKeyDown();
        double cx = about ? middleX : fixedX;
        double cy = about ? middleY : fixedY;
        request.aboutX = Scale.mm(cx);
        request.aboutY = Scale.mm(cy);
        Point centre = absolute(cx, cy);
        Point start = getStartLocation();
        Point now = getLocation();
        if (turning) {
            double degrees = Math.toDegrees(Math.atan2(now.y - centre.y, now.x - centre.x)
                    - Math.atan2(start.y - centre.y, start.x - centre.x));
            if (getCurrentInput().isShiftKeyDown()) {
                double turn = part.mark().getTurn();
                degrees = Math.rint((turn + degrees) / STEP) * STEP - turn;
            }
            request.degrees = degrees;
        } else {
            double from = Math.hypot(start.x - centre.x, start.y - centre.y);
            double along = ((now.x - centre.x) * (start.x - centre.x) + (now.y - centre.y) * (start.y - centre.y))
                    / Math.max(from * from, 1);
            request.factor = Math.max(LEAST_FACTOR, Math.min(MOST_FACTOR, along));
        }
    }

    private Point absolute(double x, double y) {
        PrecisionPoint point = new PrecisionPoint(x, y);
        part.getFigure().translateToAbsolute(point);
        return point;
    }

    @Override
    protected Command getCommand() {
        return part.getCommand(getSourceRequest());
    }

    @Override
    protected boolean handleKeyDown(org.eclipse.swt.events.KeyEvent event) {
        if (event.keyCode == SWT.ALT || event.keyCode == SWT.SHIFT) {
            updateSourceRequest();
            showSourceFeedback();
            return true;
        }
        return super.handleKeyDown(event);
    }
}
