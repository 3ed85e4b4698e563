/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.part;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.draw2d.PositionConstants;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editparts.ScalableFreeformRootEditPart;
import org.eclipse.gef.editpolicies.SelectionHandlesEditPolicy;
import org.eclipse.gef.requests.ChangeBoundsRequest;
import org.pollex.edit.PlaceMarkCommand;
import org.pollex.edit.Pose;
import org.pollex.editor.figure.MarkFigure;
import org.pollex.editor.view.CrispRoot;
import org.pollex.editor.view.Scale;

/**
 * Moves, scales and turns a mark; the mark's own figure is the preview. With Ctrl held a copy is moved.
 */
final class PlaceMarkPolicy extends SelectionHandlesEditPolicy {

    private boolean previewing;
    private MarkFigure copy;

    @Override
    protected List<?> createSelectionHandles() {
        List<Object> handles = new ArrayList<>();
        GraphicalEditPart part = (GraphicalEditPart) getHost();
        handles.add(new FrameHandle(part));
        if (!markPart().scene().locked(markPart().mark())) {
            for (int corner : new int[] {PositionConstants.NORTH_WEST, PositionConstants.NORTH_EAST,
                PositionConstants.SOUTH_WEST, PositionConstants.SOUTH_EAST}) {
                handles.add(new GripHandle(part, corner, false));
            }
            handles.add(new GripHandle(part, PositionConstants.NORTH, true));
        }
        return handles;
    }

    private MarkPart markPart() {
        return (MarkPart) getHost();
    }

    @Override
    public boolean understandsRequest(Request request) {
        return RequestConstants.REQ_MOVE.equals(request.getType()) || PoseRequest.TYPE.equals(request.getType());
    }

    @Override
    public EditPart getTargetEditPart(Request request) {
        return understandsRequest(request) ? getHost() : null;
    }

    @Override
    public Command getCommand(Request request) {
        if (!understandsRequest(request) || markPart().scene().locked(markPart().mark())) {
            return null;
        }
        String label = request instanceof PoseRequest pose ? pose.turning ? "Turn" : "Scale" : "Move";
        Pose wished = wished(request);
        return wished.equals(Pose.of(markPart().mark())) ? null
                : new PlaceMarkCommand(label, markPart().mark(), wished);
    }

    private Pose wished(Request request) {
        Pose start = Pose.of(markPart().mark());
        if (request instanceof PoseRequest pose) {
            return pose.turning ? start.turnedAbout(pose.degrees, pose.aboutX, pose.aboutY)
                    : start.scaledAbout(pose.factor, pose.aboutX, pose.aboutY);
        }
        return moved(markPart(), (ChangeBoundsRequest) request);
    }

    /** Where a request that moves takes a mark, or a copy of it. */
    static Pose moved(MarkPart part, ChangeBoundsRequest move) {
        double zoom = ((ScalableFreeformRootEditPart) part.getRoot()).getZoomManager().getZoom();
        double dx = Scale.mm(Math.rint(move.getMoveDelta().x / zoom));
        double dy = Scale.mm(Math.rint(move.getMoveDelta().y / zoom));
        return part.scene().snap(part.mark(), Pose.of(part.mark()).moved(dx, dy));
    }

    @Override
    public void showSourceFeedback(Request request) {
        if (RequestConstants.REQ_CLONE.equals(request.getType()) && !markPart().scene().locked(markPart().mark())) {
            showCopy((ChangeBoundsRequest) request);
        } else if (understandsRequest(request) && !markPart().scene().locked(markPart().mark())) {
            Pose pose = wished(request);
            if (!previewing || !pose.equals(markPart().markFigure().pose())) {
                previewing = true;
                markPart().markFigure().setMoving(true);
                markPart().markFigure().place(pose);
                markPart().scene().previewing(markPart().mark(), pose);
            }
        }
    }

    @Override
    public void eraseSourceFeedback(Request request) {
        if (copy != null) {
            ((CrispRoot) getHost().getRoot()).findings().remove(copy);
            copy.disposePaths();
            copy = null;
        }
        if (previewing && understandsRequest(request)) {
            previewing = false;
            markPart().markFigure().setMoving(false);
            markPart().markFigure().place(Pose.of(markPart().mark()));
            markPart().scene().previewing(markPart().mark(), null);
        }
    }

    /** The mark stays where it is while its copy is drawn at the pointer. */
    private void showCopy(ChangeBoundsRequest request) {
        if (copy == null) {
            copy = new MarkFigure();
            copy.show(markPart().scene().look(markPart().mark()));
            copy.setMoving(true);
            ((CrispRoot) getHost().getRoot()).findings().add(copy);
        }
        copy.place(moved(markPart(), request));
    }
}
