/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import java.util.concurrent.CopyOnWriteArrayList;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;

import org.pollex.editor.side.SidePage;

/** The selection of the page in front, as the one of the editor. */
final class PageSelection implements ISelectionProvider {

    private final CopyOnWriteArrayList<ISelectionChangedListener> listeners = new CopyOnWriteArrayList<>();
    private final ISelectionChangedListener forward = event -> tell();
    private GraphicalViewer viewer;

    /** Another page is in front. */
    void show(SidePage page) {
        if (viewer != null) {
            viewer.removeSelectionChangedListener(forward);
        }
        viewer = page == null ? null : page.viewer();
        if (viewer != null) {
            viewer.addSelectionChangedListener(forward);
        }
        tell();
    }

    private void tell() {
        SelectionChangedEvent event = new SelectionChangedEvent(this, getSelection());
        listeners.forEach(each -> each.selectionChanged(event));
    }

    @Override
    public ISelection getSelection() {
        return viewer == null ? StructuredSelection.EMPTY : viewer.getSelection();
    }

    @Override
    public void setSelection(ISelection selection) {
        if (viewer != null) {
            viewer.setSelection(selection);
        }
    }

    @Override
    public void addSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.addIfAbsent(listener);
    }

    @Override
    public void removeSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.remove(listener);
    }
}
