/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.filesystem.EFS;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.gef.DefaultEditDomain;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.commands.CommandStackEvent;
import org.eclipse.gef.commands.CommandStackEventListener;
import org.eclipse.gef.editparts.ZoomManager;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.part.EditorPart;
import org.pollex.edit.BringBackCommand;
import org.pollex.editor.action.DesignTools;
import org.pollex.editor.live.show.LiveFindings;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.editor.session.Notices;
import org.pollex.editor.session.SessionListener;
import org.pollex.editor.side.SidePage;
import org.pollex.editor.work.Session;
import org.pollex.editor.work.Unsaved;
import org.pollex.markers.StudioSuite;
import org.pollex.model.design.Design;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.model.store.StoreException;
import org.pollex.rules.Suite;

/**
 * Edits one design: a page for each face of the item, one history for all of them. A file that cannot be opened is
 * explained in place of the pages. Unsaved work is kept apart and offered back after the program was killed.
 */
public final class DesignEditor extends EditorPart {

    /** Id under which the editor is contributed. */
    public static final String ID = "org.pollex.editor.design";

    private static final String TROUBLE = "trouble";
    private static final String LOCKED = "locked";
    private static final String RESTORED = "restored";

    private final DefaultEditDomain domain = new DefaultEditDomain(this);
    private final SideTabs tabs = new SideTabs(domain);
    private final Following following = new Following();
    private final Listener returning = event -> lookAtDisk();
    private Display display;
    private Composite body;
    private MessageBar bar;
    private Path file;
    private Session session;
    private Unsaved<Design> unsaved;
    private HistoryActions actions;
    private DiskWatch disk;
    private DesignTools tools;

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
        file = InputFile.required(input);
        unsaved = new Unsaved<>(file, ModelFiles.DESIGNS);
        setTitleToolTip(file.toString());
        site.setSelectionProvider(tabs.selection());
        domain.setDefaultTool(new PanTool());
        domain.loadDefaultTool();
        actions = new HistoryActions(this);
        site.getShell().addListener(SWT.Activate, returning);
    }

    @Override
    public void createPartControl(Composite parent) {
        display = parent.getDisplay();
        body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(body);
        tools = new DesignTools(this);
        tabs.equip(tools::equip);
        open();
    }

    /** Opens the file and shows it, or why it cannot be shown. */
    private void open() {
        try {
            show(ModelFiles.DESIGNS.openKeeping(file), false);
        } catch (StoreException e) {
            clear();
            TroublePage.create(body, file.getFileName().toString(), e.getMessage(), cures(e.reason()));
            body.layout(true, true);
            firePropertyChange(PROP_DIRTY);
            firePropertyChange(PROP_INPUT);
        }
    }

    private void clear() {
        if (session != null) {
            domain.getCommandStack().removeCommandStackEventListener(following);
            session.close();
            session = null;
        }
        tabs.close();
        for (Control child : body.getChildren()) {
            child.dispose();
        }
    }

    private void show(Opened<Design> opened, boolean notSaved) throws StoreException {
        Suite suite = StudioSuite.get().near(file.getParent());
        clear();
        domain.getCommandStack().flush();
        bar = new MessageBar(body);
        session = new Session(opened, suite, domain.getCommandStack(), this::soon);
        disk = new DiskWatch(session, bar, this::soon, this::readAnew, following::tell);
        domain.getCommandStack().addCommandStackEventListener(following);
        session.add(following);
        tools.toolbar(body);
        tabs.create(body, session);
        if (notSaved) {
            session.take(opened, true);
        }
        session.start();
        unsaved.offer(opened, bar, work -> session.run(new BringBackCommand("Bring back unsaved work",
                session.design(), work)));
        body.layout(true, true);
        firePropertyChange(PROP_DIRTY);
        firePropertyChange(PROP_INPUT);
        lookAtDisk();
    }

    private List<Notices.Answer> cures(StoreException.Reason reason) {
        List<Notices.Answer> cures = new ArrayList<>();
        if (reason == StoreException.Reason.UNKNOWN_CONTENT) {
            cures.add(new Notices.Answer("Open without it", this::openWithout));
        }
        try {
            if (ModelFiles.DESIGNS.lastGood(file).isPresent()) {
                cures.add(new Notices.Answer("Open the last good copy", this::recoverLastGood));
            }
        } catch (StoreException e) {
            ILog.of(DesignEditor.class).warn("The last good copy could not be looked for", e);
        }
        cures.add(new Notices.Answer("Try again", this::open));
        cures.add(new Notices.Answer("Show in folder", () -> Program.launch(file.getParent().toString())));
        cures.add(new Notices.Answer("Close", () -> getSite().getPage().closeEditor(this, false)));
        return cures;
    }

    private void recoverLastGood() {
        try {
            show(ModelFiles.DESIGNS.recover(file), true);
            bar.show(RESTORED, "This is the last good copy. Saving puts it in place of the damaged file.");
        } catch (StoreException e) {
            open();
        }
    }

    private void openWithout() {
        List<String> leftOut = new ArrayList<>();
        try {
            show(ModelFiles.DESIGNS.openWithout(file, leftOut), false);
            bar.show(RESTORED, "Left out, and lost when this is saved: " + String.join("; ", leftOut) + ".",
                    new Notices.Answer("Save as\u2026", this::doSaveAs));
        } catch (StoreException e) {
            open();
        }
    }

    private void soon(Runnable run) {
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                if (!body.isDisposed() && session != null) {
                    run.run();
                }
            });
        }
    }

    /** The page in front; null while the file cannot be shown. */
    public SidePage page() {
        return tabs.page();
    }

    /** The findings over the page in front. */
    public LiveFindings live() {
        return tabs.live();
    }

    /** The pages, one for each face. */
    public List<SidePage> pages() {
        return tabs.all();
    }

    SideTabs tabs() {
        return tabs;
    }

    /** An action by its id; null when there is none. */
    public IAction action(String id) {
        return actions.action(id);
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        if (session == null) {
            return;
        }
        Saving.Saved saved = new Saving(getSite().getShell(), session).save();
        switch (saved.outcome()) {
            case READ_ANEW -> readAnew();
            case NOT_SAVED -> monitor.setCanceled(true);
            case SAVED -> {
                unsaved.drop();
                bar.clear(RESTORED);
                refreshResource(monitor);
            }
            default -> throw new IllegalStateException(saved.toString());
        }
        firePropertyChange(PROP_DIRTY);
        saved.copy().ifPresent(this::openBeside);
        lookAtDisk();
    }

    @Override
    public void doSaveAs() {
        if (session != null) {
            new Saving(getSite().getShell(), session).askWhere().ifPresent(this::saveAs);
        }
    }

    /** Saves to another file, with the art beside it, and goes on with that one in place of this editor. */
    public void saveAs(Path target) {
        if (session == null || !new Saving(getSite().getShell(), session).saveAs(target)) {
            return;
        }
        unsaved.drop();
        if (target.equals(file)) {
            open();
        } else {
            IWorkbenchPage page = getSite().getPage();
            openBeside(target);
            page.closeEditor(this, false);
        }
    }

    private void openBeside(Path target) {
        try {
            IDE.openEditorOnFileStore(getSite().getPage(), EFS.getStore(target.toUri()));
        } catch (CoreException e) {
            ILog.of(DesignEditor.class).error("The copy was saved but could not be opened: " + target, e);
        }
    }

    @Override
    public boolean isSaveAsAllowed() {
        return session != null;
    }

    @Override
    public boolean isDirty() {
        return session != null && session.dirty();
    }

    /** Takes the file as it is now; the pages stay. */
    private void readAnew() {
        unsaved.drop();
        try {
            session.take(ModelFiles.DESIGNS.openKeeping(file), false);
            firePropertyChange(PROP_DIRTY);
            lookAtDisk();
        } catch (StoreException e) {
            open();
        }
    }

    private void refreshResource(IProgressMonitor monitor) {
        IFile resource = getEditorInput().getAdapter(IFile.class);
        if (resource != null) {
            try {
                resource.refreshLocal(0, monitor);
            } catch (CoreException e) {
                ILog.of(DesignEditor.class).warn("The saved file could not be looked at again", e);
            }
        }
    }

    @Override
    public void setFocus() {
        if (page() != null) {
            page().viewer().getControl().setFocus();
            lookAtDisk();
        } else if (body != null) {
            body.setFocus();
        }
    }

    private void lookAtDisk() {
        if (session != null && body != null && !body.isDisposed()) {
            disk.look();
        }
    }

    @Override
    public <T> T getAdapter(Class<T> type) {
        Object found = null;
        if (type == DesignSession.class || type == Session.class) {
            found = session;
        } else if (type == DesignPages.class) {
            found = session == null ? null : tabs;
        } else if (Handed.is(type)) {
            found = session == null ? null : Handed.of(type, this, session, tabs, bar);
        } else if (type == CommandStack.class) {
            found = domain.getCommandStack();
        } else if (type == ActionRegistry.class) {
            found = actions.registry();
        } else if (type == ZoomManager.class && page() != null) {
            found = page().root().getZoomManager();
        } else if (type == org.eclipse.gef.GraphicalViewer.class && page() != null) {
            found = page().viewer();
        }
        return found != null ? type.cast(found) : super.getAdapter(type);
    }

    @Override
    public void dispose() {
        getSite().getShell().removeListener(SWT.Activate, returning);
        if (session != null) {
            domain.getCommandStack().removeCommandStackEventListener(following);
            session.close();
            unsaved.drop();
        }
        tabs.close();
        actions.dispose();
        super.dispose();
    }

    private final class Following implements SessionListener, CommandStackEventListener {

        @Override
        public void stackChanged(CommandStackEvent event) {
            if (event.isPostChangeEvent()) {
                firePropertyChange(PROP_DIRTY);
                actions.update();
                unsaved.changed(session.opened(), session.dirty());
            }
        }

        @Override
        public void changed() {
            tabs.refresh();
            tell();
        }

        private void tell() {
            disk.untold(session.trouble()).ifPresentOrElse(each -> bar.show(TROUBLE, each), () -> bar.clear(TROUBLE));
            session.locked().ifPresentOrElse(each -> bar.show(LOCKED, each), () -> bar.clear(LOCKED));
        }

        @Override
        public void known(Known known) {
            tabs.known(known);
            tell();
        }
    }
}
