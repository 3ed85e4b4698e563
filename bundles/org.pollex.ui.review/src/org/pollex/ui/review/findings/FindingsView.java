/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.findings;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;
import org.pollex.editor.session.Known;
import org.pollex.editor.work.Session;
import org.pollex.fixes.Remedies;
import org.pollex.fixes.Remedy;
import org.pollex.rules.CheckEntry;
import org.pollex.rules.Finding;
import org.pollex.ui.ActiveDesign;
import org.pollex.ui.ScreenImages;
import org.pollex.ui.review.ReviewWork;
import org.pollex.ui.review.WaiveDialog;
import org.pollex.ui.review.fix.OpenDesign;

/**
 * What the checks find in the design in front, by side, worst first. Selecting a finding brings its place into view.
 */
public final class FindingsView extends ViewPart {

    /** Id of the view. */
    public static final String ID = "org.pollex.ui.review.findings";

    private TreeViewer tree;
    private FindingDetail detail;
    private ActiveDesign active;
    private Thumbnails thumbnails;
    private Known shown;
    private boolean waivedToo = true;

    @Override
    public void createPartControl(Composite parent) {
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
        Composite holder = new Composite(sash, SWT.NONE);
        tree = new TreeViewer(holder, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL);
        tree.getTree().setHeaderVisible(true);
        tree.getTree().getAccessible().addAccessibleListener(new org.eclipse.swt.accessibility.AccessibleAdapter() {
            @Override
            public void getName(org.eclipse.swt.accessibility.AccessibleEvent event) {
                event.result = "Findings";
            }
        });
        TreeColumnLayout layout = new TreeColumnLayout();
        holder.setLayout(layout);
        column(layout, "Finding", 10, new WhatLabels());
        column(layout, "Severity", 2, labels(each -> SideFindings.word(each.severity())));
        column(layout, "Measured", 2, labels(each -> number(each.measured(), each.unit())));
        column(layout, "Limit", 2, labels(each -> number(each.limit(), each.unit())));
        tree.setContentProvider(new Content());
        thumbnails = new Thumbnails(parent.getDisplay(), () -> {
            if (!tree.getTree().isDisposed()) {
                tree.refresh(true);
            }
        });
        detail = new FindingDetail(sash, this::remedy, this::waive);
        sash.setWeights(62, 38);
        tree.addSelectionChangedListener(event -> selected());
        tree.addDoubleClickListener(event -> selected().ifPresent(each -> editor()));
        getSite().setSelectionProvider(tree);
        getViewSite().getActionBars().getToolBarManager().add(showWaived());
        getViewSite().getActionBars().getMenuManager().add(showWaived());
        active = new ActiveDesign(getSite().getPage(), this::refresh);
        parent.setLayout(new FillLayout());
        refresh();
    }

    private IAction showWaived() {
        Action action = new Action("Show waived findings", IAction.AS_CHECK_BOX) {
            @Override
            public void run() {
                waivedToo = isChecked();
                shown = null;
                refresh();
            }
        };
        action.setChecked(waivedToo);
        return action;
    }

    private void column(TreeColumnLayout layout, String title, int weight, ColumnLabelProvider labels) {
        TreeViewerColumn column = new TreeViewerColumn(tree, SWT.NONE);
        column.getColumn().setText(title);
        column.setLabelProvider(labels);
        layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, 70, true));
    }

    private static ColumnLabelProvider labels(java.util.function.Function<Finding, String> text) {
        return new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                return element instanceof Finding finding ? text.apply(finding) : "";
            }
        };
    }

    private static String number(OptionalDouble value, String unit) {
        return value.isEmpty() ? "" : String.format(Locale.ROOT, "%.2f %s", value.getAsDouble(),
                unit.equals("CIEDE2000") ? "\u0394E" : unit).strip();
    }

    private void refresh() {
        if (tree.getTree().isDisposed()) {
            return;
        }
        Optional<Known> known = active.known();
        String none = active.session().isEmpty() ? "Open a design to see what will not print."
                : active.session().get().trouble().orElse("The design is being checked.");
        setContentDescription(known.isEmpty() ? none : known.get().findings().isEmpty()
                ? "Nothing found: this design prints as it is." : "");
        if (known.orElse(null) == shown && shown != null) {
            return;
        }
        shown = known.orElse(null);
        Object before = tree.getStructuredSelection().getFirstElement();
        tree.getTree().setRedraw(false);
        tree.setInput(known.map(each -> SideFindings.of(each.findings(), waivedToo)).orElse(List.of()));
        tree.expandAll();
        tree.getTree().setRedraw(true);
        if (before instanceof Finding finding) {
            tree.setSelection(new StructuredSelection(finding));
        }
        known.ifPresent(each -> thumbnails.show(each, ScreenImages.rgb(tree.getTree().getBackground())));
        selectedDetail();
    }

    /** The finding that is selected, its place brought into view. */
    private Optional<Finding> selected() {
        Optional<Finding> finding = selectedDetail();
        finding.filter(each -> !each.where().isEmpty()).ifPresent(each -> active.pages()
                .ifPresent(pages -> pages.reveal(each.side(), each.where().getEnvelopeInternal())));
        return finding;
    }

    private Optional<Finding> selectedDetail() {
        Object element = tree.getStructuredSelection().getFirstElement();
        Optional<Finding> finding = element instanceof Finding each ? Optional.of(each) : Optional.empty();
        detail.show(finding, finding.flatMap(this::entry).map(CheckEntry::description).orElse(""));
        return finding;
    }

    private Optional<CheckEntry> entry(Finding finding) {
        return active.session().flatMap(each -> each.suite().checks().stream()
                .filter(entry -> entry.id().equals(finding.check())).findFirst());
    }

    private void editor() {
        active.editor().ifPresent(each -> getSite().getPage().activate(each));
    }

    private void remedy(String id) {
        Object element = tree.getStructuredSelection().getFirstElement();
        if (element instanceof Finding finding && active.session().isPresent() && shown != null) {
            OpenDesign.mend(active.session().get(), Remedies.label(id), remedies -> remedies.apply(id, finding),
                    this::said);
        }
    }

    private void said(Remedy answer) {
        if (!tree.getControl().isDisposed()) {
            detail.say(answer instanceof Remedy.Done done ? done.said() : ((Remedy.Refused) answer).why());
        }
    }

    private void waive() {
        Object element = tree.getStructuredSelection().getFirstElement();
        if (!(element instanceof Finding finding) || active.session().isEmpty()) {
            return;
        }
        Path file = active.session().get().file();
        Session session = active.editor().map(each -> each.getAdapter(Session.class)).orElse(null);
        if (finding.waived()) {
            ReviewWork.run("Taking back a waiver", file, review -> review.takeBack(file, finding), detail::say,
                    () -> again(session));
            return;
        }
        WaiveDialog dialog = new WaiveDialog(getSite().getShell(), finding);
        if (dialog.open() == WaiveDialog.OK) {
            ReviewWork.run("Waiving", file, review -> review.waive(file, finding, dialog.reason(), dialog.who()),
                    detail::say, () -> again(session));
        }
    }

    private static void again(Session session) {
        if (session != null) {
            session.again();
        }
    }

    @Override
    public void setFocus() {
        tree.getTree().setFocus();
    }

    @Override
    public void dispose() {
        if (active != null) {
            active.dispose();
            thumbnails.dispose();
        }
        super.dispose();
    }

    private final class WhatLabels extends ColumnLabelProvider {
        @Override
        public String getText(Object element) {
            return element instanceof SideFindings side ? side.title() : element instanceof Finding finding
                    ? (finding.waived() ? "Waived: " : "") + finding.message() : "";
        }

        @Override
        public String getToolTipText(Object element) {
            return getText(element);
        }

        @Override
        public Image getImage(Object element) {
            if (!(element instanceof Finding finding)) {
                return null;
            }
            // rows take the height of the first image they are given, so no smaller sign may come before it
            return thumbnails.of(finding);
        }
    }

    private static final class Content implements ITreeContentProvider {
        @Override
        public Object[] getElements(Object input) {
            return ((List<?>) input).toArray();
        }

        @Override
        public Object[] getChildren(Object parent) {
            return parent instanceof SideFindings side ? side.findings().toArray() : new Object[0];
        }

        @Override
        public Object getParent(Object element) {
            return null;
        }

        @Override
        public boolean hasChildren(Object element) {
            return element instanceof SideFindings;
        }
    }
}
