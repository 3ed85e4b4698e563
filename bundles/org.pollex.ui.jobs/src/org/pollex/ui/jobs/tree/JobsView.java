/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.tree;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.part.ViewPart;
import org.pollex.markers.FindingMarkers;
import org.pollex.markers.StudioProject;
import org.pollex.ui.jobs.work.Work;

/**
 * The studio's jobs with their designs, art, outputs and revisions. Files are read in the background only; the tree
 * makes a row when it comes into sight, so that a job of a thousand designs opens at once.
 */
public final class JobsView extends ViewPart {

    /** Id of the view. */
    public static final String ID = "org.pollex.ui.jobs.tree";

    /** Changes of the workspace come in bursts; the folders are read once after them, milliseconds. */
    private static final int QUIET = 200;

    private static final int NAME_SHARE = 50;
    private static final int NAME_LEAST = 120;
    private static final int STATE_LEAST = 130;

    private TreeViewer viewer;
    private JobTree tree;
    private Text filter;
    private Composite stack;
    private Label nothing;
    private JobActions actions;
    private final IResourceChangeListener listener = this::changed;
    private final Job reader = Job.create("Reading the jobs", monitor -> {
        List<JobItem> jobs = new JobsReader(LocalDate.now()).read(monitor);
        Work.later(() -> show(jobs));
    });

    @Override
    public void createPartControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(area);
        filter = new Text(area, SWT.SEARCH | SWT.ICON_CANCEL | SWT.ICON_SEARCH);
        filter.setMessage("Filter jobs and designs");
        filter.setToolTipText("Show only jobs and designs whose name, client or state holds this text");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
        stack = new Composite(area, SWT.NONE);
        stack.setLayout(new StackLayout());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(stack);
        nothing = new Label(stack, SWT.WRAP | SWT.CENTER);
        Composite columns = new Composite(stack, SWT.NONE);
        viewer = new TreeViewer(columns, SWT.VIRTUAL | SWT.MULTI | SWT.FULL_SELECTION | SWT.H_SCROLL
                | SWT.V_SCROLL);
        viewer.getTree().setHeaderVisible(true);
        viewer.setUseHashlookup(true);
        tree = new JobTree(viewer);
        viewer.setContentProvider(tree);
        TreeColumnLayout layout = new TreeColumnLayout();
        columns.setLayout(layout);
        column(layout, "Job or design", NAME_SHARE, NAME_LEAST);
        column(layout, "State", 100 - NAME_SHARE, STATE_LEAST);
        viewer.setLabelProvider(new JobLabels());
        viewer.setInput(tree);
        viewer.getTree().addListener(SWT.MouseMove, event -> tell(viewer.getTree().getItem(new Point(event.x,
                event.y))));
        actions = new JobActions(getViewSite(), this);
        viewer.addOpenListener(event -> actions.open());
        JobDrop.onto(viewer);
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(actions::fill);
        viewer.getControl().setMenu(menu.createContextMenu(viewer.getControl()));
        getSite().registerContextMenu(menu, viewer);
        getSite().setSelectionProvider(viewer);
        filter.addModifyListener(event -> {
            tree.filter(filter.getText());
            refill();
        });
        say("Reading the jobs\u2026");
        reader.setSystem(true);
        ResourcesPlugin.getWorkspace().addResourceChangeListener(listener, IResourceChangeEvent.POST_CHANGE);
        reader.schedule();
    }

    /** Columns of their own spare the tree from measuring each of its lines for the width of the widest. */
    private void column(TreeColumnLayout layout, String name, int share, int least) {
        TreeColumn column = new TreeColumn(viewer.getTree(), SWT.NONE);
        column.setText(name);
        layout.setColumnData(column, new ColumnWeightData(share, least));
    }

    /** A line that is wider than its columns is read in full under the pointer. */
    private void tell(TreeItem item) {
        String words = item != null && item.getData() instanceof JobItem line
                ? line.detail().isEmpty() ? line.name() : line.name() + "\n" + line.detail() : null;
        if (!Objects.equals(words, viewer.getTree().getToolTipText())) {
            viewer.getTree().setToolTipText(words);
        }
    }

    /** The lines that are selected. */
    List<JobItem> selected() {
        IStructuredSelection selection = viewer.getStructuredSelection();
        return selection.stream().filter(JobItem.class::isInstance).map(JobItem.class::cast).toList();
    }

    /** The one line that is selected. */
    Optional<JobItem> one() {
        List<JobItem> all = selected();
        return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    /** Shows or hides what is below the selected line. */
    void toggle() {
        for (TreeItem item : viewer.getTree().getSelection()) {
            item.setExpanded(!item.getExpanded());
        }
    }

    private void changed(IResourceChangeEvent event) {
        IResourceDelta delta = event.getDelta() == null ? null
                : event.getDelta().findMember(new org.eclipse.core.runtime.Path(StudioProject.NAME));
        boolean findings = event.findMarkerDeltas(FindingMarkers.TYPE, true).length > 0;
        if (delta != null || findings) {
            reader.schedule(QUIET);
        }
    }

    private void show(List<JobItem> jobs) {
        if (viewer.getControl().isDisposed()) {
            return;
        }
        tree.show(jobs);
        refill();
    }

    /** Rows know their places, not their lines: what was open and selected is found again by what it stands for. */
    private void refill() {
        Tree control = viewer.getTree();
        Set<Object> open = new HashSet<>();
        for (TreeItem item : control.getItems()) {
            if (item.getExpanded() && item.getData() != null) {
                open.add(item.getData());
            }
        }
        List<JobItem> selected = selected();
        control.setRedraw(false);
        try {
            if (control.getItemCount() != tree.jobs().size()) {
                viewer.setChildCount(tree, tree.jobs().size());
            }
            for (int i = 0; i < tree.jobs().size(); i++) {
                JobItem job = tree.jobs().get(i);
                TreeItem item = control.getItem(i);
                if (!(item.getData() instanceof JobItem old && old.says(job))) {
                    tree.updateElement(tree, i);
                    item.clearAll(true);
                }
                boolean expand = open.contains(job) || tree.filtered();
                if (item.getExpanded() != expand && item.getItemCount() > 0) {
                    item.setExpanded(expand);
                }
            }
            reselect(selected);
        } finally {
            control.setRedraw(true);
        }
        say(!tree.empty() && !tree.jobs().isEmpty() ? "" : tree.empty()
                ? "No jobs yet. Make one with File > New job, drop a job folder here, or open the sample job from "
                + "the welcome page." : "Nothing fits the filter. Clear it to see all jobs.");
    }

    private void reselect(List<JobItem> wanted) {
        TreeItem[] found = wanted.stream().flatMap(each -> row(each).stream()).toArray(TreeItem[]::new);
        if (found.length > 0) {
            viewer.getTree().setSelection(found);
        }
    }

    private Optional<TreeItem> row(JobItem wanted) {
        Optional<JobItem> above = wanted.parent();
        Optional<TreeItem> under = above.isPresent() ? row(above.get()) : Optional.empty();
        if (above.isPresent() && under.isEmpty()) {
            return Optional.empty();
        }
        List<JobItem> lines = under.isPresent() && under.get().getData() instanceof JobItem item ? item.children()
                : tree.jobs();
        int at = lines.indexOf(wanted);
        if (at < 0) {
            return Optional.empty();
        }
        return Optional.of(under.isPresent() ? under.get().getItem(at) : viewer.getTree().getItem(at));
    }

    private void say(String words) {
        nothing.setText(words);
        ((StackLayout) stack.getLayout()).topControl = words.isEmpty() ? viewer.getTree().getParent() : nothing;
        stack.layout(true, true);
    }

    @Override
    public void setFocus() {
        if (viewer.getControl().isVisible()) {
            viewer.getControl().setFocus();
        } else {
            filter.setFocus();
        }
    }

    @Override
    public void dispose() {
        ResourcesPlugin.getWorkspace().removeResourceChangeListener(listener);
        reader.cancel();
        super.dispose();
    }
}
