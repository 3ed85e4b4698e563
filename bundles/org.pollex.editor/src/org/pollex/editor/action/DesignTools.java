/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.action;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.commands.CommandStackEventListener;
import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.contexts.IContextService;
import org.pollex.editor.side.SidePage;
import org.pollex.editor.view.Scale;

/** Gives an editor its toolbar, its menu on the drawing, its keys, and takes files dropped on its pages. */
public final class DesignTools {

    /** Id of the menu on the drawing. */
    public static final String POPUP = "org.pollex.editor.design";

    private static final String[][] TOOLS = {
        {"place-art", "add-text", "add-rectangle", "add-ellipse"},
        {"turn-left", "turn-right", "mirror"},
        {"align-left", "align-centre", "align-right", "align-top", "align-middle", "align-bottom"},
        {"distribute-across", "distribute-down"},
        {"to-front", "forward", "backward", "to-back"},
        {"duplicate", "group", "lock", "hide", "show-all", "other-side", "overprint"}};

    private final IEditorPart editor;
    private final MenuManager popup = new MenuManager();

    /** Activates the keys and registers the menu. */
    public DesignTools(IEditorPart editor) {
        this.editor = editor;
        editor.getSite().getService(IContextService.class).activateContext("org.pollex.editor.context");
        popup.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        editor.getSite().registerContextMenu(POPUP, popup, editor.getSite().getSelectionProvider());
    }

    /** The toolbar; it lives as long as {@code parent}, which has a grid. */
    public void toolbar(Composite parent) {
        ToolBarManager manager = new ToolBarManager(SWT.FLAT | SWT.HORIZONTAL | SWT.WRAP);
        MenuParts parts = new MenuParts(editor.getSite());
        for (String[] group : TOOLS) {
            manager.add(new Separator());
            for (String name : group) {
                manager.add(parts.own(name));
            }
        }
        ToolBar bar = manager.createControl(parent);
        bar.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        ISelectionProvider selection = editor.getSite().getSelectionProvider();
        ISelectionChangedListener selected = event -> follow(manager);
        CommandStack history = editor.getAdapter(CommandStack.class);
        CommandStackEventListener done = event -> follow(manager);
        selection.addSelectionChangedListener(selected);
        history.addCommandStackEventListener(done);
        bar.addDisposeListener(event -> {
            selection.removeSelectionChangedListener(selected);
            history.removeCommandStackEventListener(done);
            manager.dispose();
        });
    }

    /** Greys what cannot be done now. */
    private static void follow(ToolBarManager manager) {
        for (IContributionItem item : manager.getItems()) {
            item.update();
        }
    }

    /** Gives a page the menu and lets it take files. */
    public void equip(SidePage page) {
        page.viewer().getControl().setMenu(popup.createContextMenu(page.viewer().getControl()));
        DropTarget target = new DropTarget(page.viewer().getControl(), DND.DROP_COPY | DND.DROP_DEFAULT);
        target.setTransfer(FileTransfer.getInstance());
        target.addDropListener(new ArtDrop(() -> Workplace.of(editor), page));
    }

    /** Takes files; their names are known only when they are let go. */
    private static final class ArtDrop extends DropTargetAdapter {

        private final Supplier<Optional<Workplace>> where;
        private final SidePage page;

        ArtDrop(Supplier<Optional<Workplace>> where, SidePage page) {
            this.where = where;
            this.page = page;
        }

        @Override
        public void dragEnter(DropTargetEvent event) {
            dragOver(event);
        }

        @Override
        public void dragOperationChanged(DropTargetEvent event) {
            dragOver(event);
        }

        @Override
        public void dragOver(DropTargetEvent event) {
            event.detail = where.get().filter(Workplace::open).isPresent() ? DND.DROP_COPY : DND.DROP_NONE;
        }

        @Override
        public void drop(DropTargetEvent event) {
            Optional<Workplace> at = where.get().filter(Workplace::open);
            if (at.isEmpty() || !(event.data instanceof String[] names)) {
                event.detail = DND.DROP_NONE;
                return;
            }
            List<Path> files = new ArrayList<>();
            for (String name : names) {
                files.add(Path.of(name));
            }
            org.eclipse.swt.graphics.Point on = page.viewer().getControl().toControl(event.x, event.y);
            Point view = page.root().getZoomManager().getViewport().getViewLocation();
            double pixels = page.root().getZoomManager().getZoom() * Scale.UM;
            new ArtIn(at.get()).place(files, (view.x + on.x) / pixels, (view.y + on.y) / pixels);
        }
    }
}
