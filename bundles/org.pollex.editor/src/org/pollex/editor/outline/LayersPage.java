/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.outline;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.gef.commands.Command;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnPixelData;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPropertyListener;
import org.eclipse.ui.part.Page;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;
import org.eclipse.ui.views.properties.IPropertySheetPage;
import org.locationtech.jts.geom.Envelope;
import org.pollex.edit.Pose;
import org.pollex.editor.property.PropertyPage;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.SessionListener;
import org.pollex.editor.snap.Boxes;
import org.pollex.editor.work.Session;
import org.pollex.model.design.Design;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;

/**
 * Sides, layers and marks of the design in an editor, what lies on top first. What is selected here is selected in the
 * drawing and the other way round; a layer stands for its marks there. Every change goes through the editor's history.
 */
public final class LayersPage extends Page implements IContentOutlinePage, IAdaptable, SessionListener {

    private static final int SIGN = Thumbs.SIZE + 6;
    private static final int NAME_LEAST = 90;

    private final IEditorPart editor;
    private final LayerTree tree = new LayerTree();
    private final IPropertyListener opened = (source, property) -> {
        if (property == IEditorPart.PROP_INPUT) {
            attach();
        }
    };
    private final ISelectionChangedListener drawn = event -> follow();
    private Composite area;
    private TreeViewer viewer;
    private LayerLabels labels;
    private LayerActions actions;
    private Session session;
    private DesignPages pages;
    private Design shown;
    private Set<Object> filled = Set.of();
    private boolean leading;
    private boolean late;

    /** A page for an editor of designs. */
    public LayersPage(IEditorPart editor) {
        this.editor = editor;
    }

    @Override
    public void createControl(Composite parent) {
        area = new Composite(parent, SWT.NONE);
        TreeColumnLayout layout = new TreeColumnLayout();
        area.setLayout(layout);
        viewer = new TreeViewer(area, SWT.MULTI | SWT.FULL_SELECTION | SWT.V_SCROLL);
        viewer.setUseHashlookup(true);
        viewer.setAutoExpandLevel(TreeViewer.ALL_LEVELS);
        viewer.setContentProvider(tree);
        labels = new LayerLabels(new Thumbs(viewer.getTree()));
        LayerRenaming renaming = LayerRenaming.of(viewer, getSite().getActionBars(), this::open, this::run,
                this::caughtUp);
        for (int i = LayerLabels.NAME; i <= LayerLabels.LOCKED; i++) {
            TreeViewerColumn column = new TreeViewerColumn(viewer, SWT.NONE);
            column.setLabelProvider(labels);
            layout.setColumnData(column.getColumn(), i == LayerLabels.NAME ? new ColumnWeightData(1, NAME_LEAST)
                    : new ColumnPixelData(SIGN, false));
            if (i == LayerLabels.NAME) {
                column.setEditingSupport(renaming);
            }
        }
        ColumnViewerToolTipSupport.enableFor(viewer);
        viewer.getTree().getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                if (event.childID == org.eclipse.swt.accessibility.ACC.CHILDID_SELF) {
                    event.result = "Layers";
                }
            }
        });
        viewer.getTree().addListener(SWT.MouseDown, this::pressed);
        viewer.addOpenListener(event -> reveal());
        viewer.addSelectionChangedListener(event -> lead());
        actions = new LayerActions(this, viewer);
        LayerDrop.on(this, viewer);
        getSite().setSelectionProvider(this);
        editor.addPropertyListener(opened);
        editor.getSite().getSelectionProvider().addSelectionChangedListener(drawn);
        attach();
    }

    /** The editor may show its file anew, or only now. */
    private void attach() {
        Session now = editor.getAdapter(Session.class);
        if (now == session || area.isDisposed()) {
            return;
        }
        if (session != null) {
            session.remove(this);
        }
        session = now;
        pages = editor.getAdapter(DesignPages.class);
        tree.show(session);
        labels.show(session);
        if (session != null) {
            session.add(this);
        }
        fill();
    }

    private void fill() {
        shown = session == null ? null : session.design();
        viewer.setInput(session);
        expandNew();
        follow();
    }

    /** Lines that had nothing below them until now are opened; others stay as the user left them. */
    private void expandNew() {
        Set<Object> now = new HashSet<>();
        for (Face face : session == null ? List.<Face>of() : LayerTree.faces(session)) {
            now.add(face);
            now.addAll(List.of(tree.getChildren(face)));
        }
        now.removeIf(each -> !tree.hasChildren(each));
        for (Object each : now) {
            if (!filled.contains(each)) {
                viewer.setExpandedState(each, true);
            }
        }
        filled = now;
    }

    @Override
    public void changed() {
        if (viewer.isCellEditorActive()) {
            late = true;
        } else if (session.design() != shown) {
            fill();
        } else {
            viewer.refresh();
            expandNew();
            actions.update();
        }
    }

    /** A name is typed no more: what changed meanwhile is shown. */
    private void caughtUp() {
        if (late) {
            late = false;
            viewer.getTree().getDisplay().asyncExec(() -> {
                if (!area.isDisposed() && session != null) {
                    changed();
                }
            });
        }
    }

    /** The drawing's selection changed, or another face is in front. */
    private void follow() {
        if (leading || session == null) {
            return;
        }
        List<Object> here = selected();
        Set<Mark> there = new LinkedHashSet<>(pages.selected());
        boolean same = here.stream().allMatch(each -> Face.of(each).filter(face -> face.name()
                .equals(pages.face())).isPresent()) && drawn(here).equals(there);
        if (same && !here.isEmpty()) {
            return;
        }
        leading = true;
        try {
            viewer.setSelection(there.isEmpty() ? new StructuredSelection(new Face(pages.face()))
                    : new StructuredSelection(List.copyOf(there)), true);
        } finally {
            leading = false;
        }
        actions.update();
    }

    /** The tree's selection changed: the drawing follows. */
    private void lead() {
        actions.update();
        List<Object> here = selected();
        getSite().getActionBars().getStatusLineManager().setMessage(here.isEmpty() ? "" : here.size() == 1
                ? LayerWords.about(here.get(0)) : here.size() + " lines selected");
        if (leading || session == null || here.isEmpty()) {
            return;
        }
        leading = true;
        try {
            Face.of(here.get(0)).ifPresent(face -> pages.show(face.name()));
            pages.select(List.copyOf(drawn(here)));
        } finally {
            leading = false;
        }
    }

    /** The marks of the face in front that lines stand for and that can be seen. */
    private Set<Mark> drawn(List<Object> lines) {
        Set<Mark> marks = new HashSet<>();
        for (Object each : lines) {
            if (Face.of(each).filter(face -> face.name().equals(pages.face())).isPresent()) {
                if (each instanceof Layer layer) {
                    marks.addAll(layer.getMarks());
                } else if (each instanceof Mark mark) {
                    marks.add(mark);
                }
            }
        }
        marks.removeIf(each -> each.isHidden() || each.eContainer() instanceof Layer layer && layer.isHidden());
        return marks;
    }

    private void pressed(Event event) {
        ViewerCell cell = viewer.getCell(new Point(event.x, event.y));
        if (event.button != 1 || cell == null || cell.getElement() instanceof Face) {
            return;
        }
        if (cell.getColumnIndex() == LayerLabels.HIDDEN) {
            LayerChanges.hide(List.of(cell.getElement())).ifPresentOrElse(this::run, () -> refuse(cell.getElement()));
        } else if (cell.getColumnIndex() == LayerLabels.LOCKED) {
            LayerChanges.lock(List.of(cell.getElement())).ifPresent(this::run);
        }
    }

    private void refuse(Object element) {
        getSite().getActionBars().getStatusLineManager().setErrorMessage(LayerWords.name(element)
                + " or its layer is locked; unlock it first.");
    }

    /** Brings the mark of the one line that is selected into view. */
    private void reveal() {
        List<Object> lines = selected();
        if (lines.size() == 1 && lines.get(0) instanceof Mark mark && session != null) {
            Envelope box = Boxes.of(session.look(mark).hull(), Pose.of(mark));
            Face.of(mark).ifPresent(face -> pages.reveal(face.name(), box));
            editor.getSite().getPage().activate(editor);
        }
    }

    /** The lines selected, in the order of the tree. */
    List<Object> selected() {
        return List.<Object>copyOf(viewer.getStructuredSelection().toList());
    }

    /** The design shown; empty while the file cannot be opened. */
    Optional<Session> session() {
        return Optional.ofNullable(session);
    }

    /** The face of the first line selected, or the one in front. */
    Face face() {
        return selected().stream().findFirst().flatMap(Face::of).orElseGet(() -> new Face(pages.face()));
    }

    /** Whether the design may be changed. */
    boolean open() {
        return session != null && session.locked().isEmpty();
    }

    /** Does a change; what is selected stays so as far as it is still there. */
    void run(Command command) {
        List<Object> before = selected();
        leading = true;
        try {
            session.run(command);
        } finally {
            leading = false;
        }
        getSite().getActionBars().getStatusLineManager().setErrorMessage(null);
        select(before.stream().filter(each -> Face.of(each).isPresent()).toList());
    }

    /** Selects lines here and what they stand for in the drawing. */
    void select(List<?> lines) {
        viewer.setSelection(new StructuredSelection(lines), true);
        lead();
    }

    /** Begins to type the name of a line. */
    void rename(Object line) {
        viewer.editElement(line, LayerLabels.NAME);
    }

    /** The editor whose design is shown. */
    IEditorPart editor() {
        return editor;
    }

    @Override
    public Control getControl() {
        return area;
    }

    @Override
    public void setFocus() {
        viewer.getTree().setFocus();
    }

    /** The tree. */
    public Tree tree() {
        return viewer.getTree();
    }

    @Override
    public <T> T getAdapter(Class<T> type) {
        return type == IPropertySheetPage.class && session != null ? type.cast(new PropertyPage(session, pages))
                : null;
    }

    @Override
    public ISelection getSelection() {
        return viewer == null ? StructuredSelection.EMPTY : viewer.getSelection();
    }

    @Override
    public void setSelection(ISelection selection) {
        viewer.setSelection(selection, true);
    }

    @Override
    public void addSelectionChangedListener(ISelectionChangedListener listener) {
        viewer.addSelectionChangedListener(listener);
    }

    @Override
    public void removeSelectionChangedListener(ISelectionChangedListener listener) {
        viewer.removeSelectionChangedListener(listener);
    }

    @Override
    public void dispose() {
        editor.removePropertyListener(opened);
        editor.getSite().getSelectionProvider().removeSelectionChangedListener(drawn);
        if (session != null) {
            session.remove(this);
            session = null;
        }
        super.dispose();
    }
}
