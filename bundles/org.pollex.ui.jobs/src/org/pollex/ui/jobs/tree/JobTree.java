/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.tree;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.jface.viewers.ILazyTreeContentProvider;
import org.eclipse.jface.viewers.TreeViewer;

/** What the tree shows: the lines last read, narrowed by what is typed. Rows are filled when they come into sight. */
final class JobTree implements ILazyTreeContentProvider {

    private final TreeViewer viewer;
    private List<JobItem> read = List.of();
    private List<JobItem> shown = List.of();
    private String filter = "";

    JobTree(TreeViewer viewer) {
        this.viewer = viewer;
    }

    void show(List<JobItem> jobs) {
        read = jobs;
        narrow();
    }

    void filter(String text) {
        filter = text.strip().toLowerCase(Locale.ROOT);
        narrow();
    }

    boolean filtered() {
        return !filter.isEmpty();
    }

    List<JobItem> jobs() {
        return shown;
    }

    boolean empty() {
        return read.isEmpty();
    }

    private void narrow() {
        shown = filter.isEmpty() ? read
                : read.stream().map(each -> each.fitting(filter, null)).flatMap(Optional::stream).toList();
    }

    private List<JobItem> below(Object element) {
        return element instanceof JobItem item ? item.children() : shown;
    }

    @Override
    public void updateElement(Object parent, int index) {
        List<JobItem> children = below(parent);
        if (index < children.size()) {
            JobItem child = children.get(index);
            viewer.replace(parent, index, child);
            viewer.setChildCount(child, child.children().size());
        }
    }

    @Override
    public void updateChildCount(Object element, int current) {
        int count = below(element).size();
        if (count != current) {
            viewer.setChildCount(element, count);
        }
    }

    @Override
    public Object getParent(Object element) {
        return element instanceof JobItem item ? item.parent().map(Object.class::cast).orElse(this) : null;
    }
}
