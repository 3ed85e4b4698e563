/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.part;

import java.util.List;
import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CompoundCommand;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.eclipse.gef.editpolicies.RootComponentEditPolicy;
import org.eclipse.gef.editpolicies.LayoutEditPolicy;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.requests.ChangeBoundsRequest;
import org.eclipse.gef.requests.CreateRequest;
import org.eclipse.gef.tools.MarqueeDragTracker;
import org.pollex.edit.Arrange;
import org.pollex.edit.Pose;
import org.pollex.editor.figure.ItemFigure;

/** The item of one page; its children are the marks of the side. */
public final class SidePart extends AbstractGraphicalEditPart {

    private final SideScene scene;

    SidePart(SideScene scene) {
        this.scene = scene;
        setModel(scene);
    }

    /** What the part shows. */
    public SideScene scene() {
        return scene;
    }

    @Override
    protected IFigure createFigure() {
        return new ItemFigure();
    }

    @Override
    protected void createEditPolicies() {
        installEditPolicy(EditPolicy.COMPONENT_ROLE, new RootComponentEditPolicy());
        installEditPolicy(EditPolicy.LAYOUT_ROLE, new KeepPlaces());
    }

    @Override
    public boolean isSelectable() {
        return false;
    }

    @Override
    public DragTracker getDragTracker(Request request) {
        return new MarqueeDragTracker();
    }

    @Override
    protected List<?> getModelChildren() {
        return scene.marks();
    }

    @Override
    protected void refreshVisuals() {
        ((ItemFigure) getFigure()).show(scene.item());
    }

    /** Shows item and marks anew, after any change of the model. */
    public void refreshAll() {
        refresh();
        for (Object child : getChildren()) {
            ((EditPart) child).refresh();
        }
    }

    @Override
    public void deactivate() {
        super.deactivate();
        ((ItemFigure) getFigure()).disposePaths();
    }

    /** Children move by their own policy; a move must still find a target. */
    private static final class KeepPlaces extends LayoutEditPolicy {
        @Override
        protected EditPolicy createChildEditPolicy(EditPart child) {
            return new PlaceMarkPolicy();
        }

        @Override
        protected Command getCreateCommand(CreateRequest request) {
            return null;
        }

        @Override
        protected Command getCloneCommand(ChangeBoundsRequest request) {
            CompoundCommand copies = new CompoundCommand("Copy");
            for (Object each : request.getEditParts()) {
                if (each instanceof MarkPart part && !part.scene().locked(part.mark())) {
                    Pose start = Pose.of(part.mark());
                    Pose there = PlaceMarkPolicy.moved(part, request);
                    copies.add(Arrange.duplicate(List.of(part.mark()), there.x() - start.x(), there.y() - start.y()));
                }
            }
            return copies.isEmpty() ? null : copies;
        }

        @Override
        protected Command getDeleteDependantCommand(Request request) {
            return null;
        }

        @Override
        protected Command getMoveChildrenCommand(Request request) {
            return null;
        }
    }
}
