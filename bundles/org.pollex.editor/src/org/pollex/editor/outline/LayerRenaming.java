/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.outline;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.eclipse.gef.commands.Command;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ColumnViewerEditor;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationListener;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationStrategy;
import org.eclipse.jface.viewers.ColumnViewerEditorDeactivationEvent;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TextCellEditor;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerEditor;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.part.CellEditorActionHandler;
import org.pollex.edit.RenameLayerCommand;
import org.pollex.edit.RenameMarkCommand;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;

/** Names are typed in their place in the tree, once that is asked for; a click alone never begins it. */
final class LayerRenaming extends EditingSupport {

    private final BooleanSupplier open;
    private final Consumer<Command> run;
    private final TextCellEditor cell;

    private LayerRenaming(TreeViewer viewer, BooleanSupplier open, Consumer<Command> run) {
        super(viewer);
        this.open = open;
        this.run = run;
        cell = new TextCellEditor(viewer.getTree());
    }

    /**
     * Makes names editable.
     *
     * @param bars  keys such as Delete go to the name while it is typed
     * @param open  whether anything may be changed
     * @param after called when typing ended
     */
    static LayerRenaming of(TreeViewer viewer, IActionBars bars, BooleanSupplier open, Consumer<Command> run,
            Runnable after) {
        LayerRenaming renaming = new LayerRenaming(viewer, open, run);
        new CellEditorActionHandler(bars).addCellEditor(renaming.cell);
        TreeViewerEditor.create(viewer, new ColumnViewerEditorActivationStrategy(viewer) {
            @Override
            protected boolean isEditorActivationEvent(ColumnViewerEditorActivationEvent event) {
                return event.eventType == ColumnViewerEditorActivationEvent.PROGRAMMATIC;
            }
        }, ColumnViewerEditor.DEFAULT);
        viewer.getColumnViewerEditor().addEditorActivationListener(new ColumnViewerEditorActivationListener() {
            @Override
            public void beforeEditorActivated(ColumnViewerEditorActivationEvent event) {
                // nothing to prepare
            }

            @Override
            public void afterEditorActivated(ColumnViewerEditorActivationEvent event) {
                // the cell selects its words by itself
            }

            @Override
            public void beforeEditorDeactivated(ColumnViewerEditorDeactivationEvent event) {
                // the value was taken already
            }

            @Override
            public void afterEditorDeactivated(ColumnViewerEditorDeactivationEvent event) {
                after.run();
            }
        });
        return renaming;
    }

    @Override
    protected CellEditor getCellEditor(Object element) {
        return cell;
    }

    @Override
    protected boolean canEdit(Object element) {
        return open.getAsBoolean() && !(element instanceof Face);
    }

    @Override
    protected Object getValue(Object element) {
        return LayerWords.name(element);
    }

    @Override
    protected void setValue(Object element, Object value) {
        String name = ((String) value).strip();
        if (name.equals(LayerWords.name(element))) {
            return;
        }
        if (element instanceof Layer layer) {
            run.accept(new RenameLayerCommand(layer, name));
        } else if (element instanceof Mark mark) {
            run.accept(new RenameMarkCommand(mark, name));
        }
    }
}
