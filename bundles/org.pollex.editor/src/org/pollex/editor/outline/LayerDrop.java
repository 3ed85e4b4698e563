/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.outline;

import java.util.Optional;
import org.eclipse.gef.commands.Command;
import org.eclipse.jface.util.LocalSelectionTransfer;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.ViewerDropAdapter;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DragSourceAdapter;
import org.eclipse.swt.dnd.DragSourceEvent;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.dnd.TransferData;

/** Lines dragged within the tree: marks into layers and between marks, layers between layers and onto sides. */
final class LayerDrop extends ViewerDropAdapter {

    private final LayersPage page;

    private LayerDrop(LayersPage page, TreeViewer viewer) {
        super(viewer);
        this.page = page;
        setScrollExpandEnabled(true);
    }

    /** Lets the lines of a tree be dragged. */
    static void on(LayersPage page, TreeViewer viewer) {
        Transfer[] transfers = {LocalSelectionTransfer.getTransfer()};
        viewer.addDragSupport(DND.DROP_MOVE, transfers, new DragSourceAdapter() {
            @Override
            public void dragStart(DragSourceEvent event) {
                event.doit = page.open() && !LayerChanges.free(page.selected()).isEmpty();
                LocalSelectionTransfer.getTransfer().setSelection(viewer.getSelection());
            }

            @Override
            public void dragFinished(DragSourceEvent event) {
                LocalSelectionTransfer.getTransfer().setSelection(null);
            }
        });
        viewer.addDropSupport(DND.DROP_MOVE, transfers, new LayerDrop(page, viewer));
    }

    @Override
    public boolean validateDrop(Object target, int operation, TransferData type) {
        return LocalSelectionTransfer.getTransfer().isSupportedType(type) && command(target).isPresent();
    }

    @Override
    public boolean performDrop(Object data) {
        Optional<Command> command = command(getCurrentTarget());
        command.ifPresent(page::run);
        return command.isPresent();
    }

    private Optional<Command> command(Object target) {
        return page.open() ? page.session().flatMap(session -> LayerChanges.drop(session.design(),
                page.selected(), target, getCurrentLocation() == LOCATION_AFTER)) : Optional.empty();
    }
}
