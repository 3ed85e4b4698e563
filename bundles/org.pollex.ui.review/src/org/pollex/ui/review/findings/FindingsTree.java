/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.findings;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.pollex.rules.Finding;
import org.pollex.ui.review.Words;

/** The list of findings by side, with a picture of each place; sentences are wrapped in their column. */
final class FindingsTree {

    private static final int SENTENCE = 160;
    private static final int WORD = 72;
    private static final int NUMBER = 84;

    private final TreeViewer viewer;
    private final Function<Found, Image> pictures;

    /** @param pictures  gives the picture of a place; null as long as there is none */
    FindingsTree(Composite parent, Function<Found, Image> pictures) {
        this.pictures = pictures;
        Composite holder = new Composite(parent, SWT.NONE);
        viewer = new TreeViewer(holder, SWT.FULL_SELECTION | SWT.MULTI | SWT.V_SCROLL);
        viewer.getTree().setHeaderVisible(true);
        viewer.getTree().getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = "Findings";
            }
        });
        ColumnViewerToolTipSupport.enableFor(viewer);
        TreeColumnLayout layout = new TreeColumnLayout();
        holder.setLayout(layout);
        column(layout, "Finding", 10, SENTENCE, new WhatLabels());
        column(layout, "Severity", 1, WORD, labels(each -> Words.of(each.severity())));
        column(layout, "Measured", 1, NUMBER, labels(each -> Words.number(each.measured(), each.unit())));
        column(layout, "Limit", 1, NUMBER, labels(each -> Words.number(each.limit(), each.unit())));
        viewer.setContentProvider(new Content());
        new WrappedSentences(viewer.getTree());
    }

    private void column(TreeColumnLayout layout, String title, int weight, int least, ColumnLabelProvider labels) {
        TreeViewerColumn column = new TreeViewerColumn(viewer, SWT.NONE);
        column.getColumn().setText(title);
        column.setLabelProvider(labels);
        layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, least, true));
    }

    private static ColumnLabelProvider labels(Function<Finding, String> text) {
        return new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                return element instanceof Found found ? text.apply(found.finding()) : "";
            }
        };
    }

    TreeViewer viewer() {
        return viewer;
    }

    /** Lists these instead; what was selected and is still there stays so. */
    void show(List<FindingGroup> groups) {
        Object[] before = viewer.getStructuredSelection().toArray();
        viewer.getTree().setRedraw(false);
        viewer.setInput(groups);
        viewer.expandAll();
        viewer.getTree().setRedraw(true);
        viewer.setSelection(new StructuredSelection(before));
    }

    /** What is selected; with a line that stands for a side, all of that side. */
    List<Found> selected() {
        return viewer.getStructuredSelection().stream().flatMap(FindingsTree::under).distinct().toList();
    }

    private static Stream<Found> under(Object element) {
        return element instanceof FindingGroup group ? group.findings().stream()
                : element instanceof Found found ? Stream.of(found) : Stream.empty();
    }

    /** The one finding that is selected. */
    Optional<Found> one() {
        return viewer.getStructuredSelection().size() == 1
                && viewer.getStructuredSelection().getFirstElement() instanceof Found found ? Optional.of(found)
                        : Optional.empty();
    }

    private final class WhatLabels extends ColumnLabelProvider {
        @Override
        public String getText(Object element) {
            return element instanceof FindingGroup group ? group.title() : element instanceof Found found
                    ? (found.finding().waived() ? "Waived: " : "") + found.finding().message() : "";
        }

        @Override
        public String getToolTipText(Object element) {
            return getText(element);
        }

        @Override
        public Image getImage(Object element) {
            // rows take the height of the first image they are given, so no smaller sign may come before it
            return element instanceof Found found ? pictures.apply(found) : null;
        }
    }

    private static final class Content implements ITreeContentProvider {
        @Override
        public Object[] getElements(Object input) {
            return ((List<?>) input).toArray();
        }

        @Override
        public Object[] getChildren(Object parent) {
            return parent instanceof FindingGroup group ? group.findings().toArray() : new Object[0];
        }

        @Override
        public Object getParent(Object element) {
            return null;
        }

        @Override
        public boolean hasChildren(Object element) {
            return element instanceof FindingGroup;
        }
    }
}
