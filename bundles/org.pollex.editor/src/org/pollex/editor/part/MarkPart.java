/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.part;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.eclipse.gef.editpolicies.ComponentEditPolicy;
import org.eclipse.gef.requests.GroupRequest;
import org.pollex.edit.DeleteMarkCommand;
import org.pollex.edit.Pose;
import org.pollex.editor.figure.MarkFigure;
import org.pollex.model.design.Mark;

/** A mark on the item. */
public final class MarkPart extends AbstractGraphicalEditPart {

    private final SideScene scene;

    MarkPart(SideScene scene, Mark mark) {
        this.scene = scene;
        setModel(mark);
    }

    /** The mark. */
    public Mark mark() {
        return (Mark) getModel();
    }

    SideScene scene() {
        return scene;
    }

    /** The figure, which also is the preview of a gesture. */
    public MarkFigure markFigure() {
        return (MarkFigure) getFigure();
    }

    @Override
    protected IFigure createFigure() {
        return new MarkFigure();
    }

    @Override
    protected void createEditPolicies() {
        installEditPolicy(EditPolicy.COMPONENT_ROLE, new Delete());
    }

    @Override
    protected void refreshVisuals() {
        markFigure().show(scene.look(mark()));
        markFigure().place(Pose.of(mark()));
    }

    @Override
    public void deactivate() {
        super.deactivate();
        markFigure().disposePaths();
    }

    private final class Delete extends ComponentEditPolicy {
        @Override
        protected Command createDeleteCommand(GroupRequest request) {
            return scene.locked(mark()) || mark().eContainer() == null ? null : new DeleteMarkCommand(mark());
        }
    }
}
