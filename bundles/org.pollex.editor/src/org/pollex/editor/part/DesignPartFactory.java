/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.part;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartFactory;
import org.pollex.model.design.Mark;

/** Makes the parts of one page. */
public final class DesignPartFactory implements EditPartFactory {

    private final SideScene scene;

    public DesignPartFactory(SideScene scene) {
        this.scene = scene;
    }

    @Override
    public EditPart createEditPart(EditPart context, Object model) {
        return model instanceof Mark mark ? new MarkPart(scene, mark) : new SidePart(scene);
    }
}
