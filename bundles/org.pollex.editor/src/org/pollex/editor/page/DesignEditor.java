/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Platform;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.gef.DefaultEditDomain;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.editparts.ZoomManager;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.gef.ui.actions.DeleteAction;
import org.eclipse.gef.ui.actions.RedoAction;
import org.eclipse.gef.ui.actions.SelectAllAction;
import org.eclipse.gef.ui.actions.UndoAction;
import org.eclipse.gef.ui.actions.UpdateAction;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.EditorPart;
import org.locationtech.jts.geom.Envelope;
import org.pollex.edit.BringBackCommand;
import org.pollex.editor.live.show.LiveFindings;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.editor.session.SessionListener;
import org.pollex.editor.work.KeepJob;
import org.pollex.editor.work.Recovery;
import org.pollex.editor.side.SidePage;
import org.pollex.editor.work.Session;
import org.pollex.markers.StudioSuite;
import org.pollex.model.design.Design;
import org.pollex.model.design.Mark;
import org.pollex.model.store.ChangedOnDiskException;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;
import org.pollex.print.item.ItemException;
import org.pollex.print.item.ItemFace;

/**
 * Edits one design: a page for each face of the item, one history for all of them. A file that cannot be opened is
 * explained in place of the pages. Unsaved work is kept apart and offered back after the program was killed.
 */
public final class DesignEditor extends EditorPart implements DesignPages {

    /** Id under which the editor is contributed. */
    public static final String ID = "org.pollex.editor.design";

    private static final String TROUBLE = "trouble";
    private static final String KEPT = "kept";
    private static final String DISK = "disk";

    private final DefaultEditDomain domain = new DefaultEditDomain(this);
    private final ActionRegistry actions = new ActionRegistry();
    private final Map<String, SidePage> pages = new LinkedHashMap<>();
    private final Map<String, LiveFindings> live = new LinkedHashMap<>();
    private final List<PointerListener> pointers = new CopyOnWriteArrayList<>();
    private final PageSelection selection = new PageSelection();
    private final Listening listening = new Listening();
    private Composite body;
    private MessageBar bar;
    private CTabFolder tabs;
    private Path file;
    private Session session;
    private Recovery recovery;
    private KeepJob keeping;

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
        file = InputFile.of(input).orElseThrow(() -> new PartInitException(input.getName() +
                " is not a file on disk."));
        setTitleToolTip(file.toString());
        site.setSelectionProvider(selection);
        recovery = new Recovery(Platform.getStateLocation(Platform.getBundle("org.pollex.editor")).toPath()
                .resolve("unsaved"));
        keeping = new KeepJob(recovery, file);
        for (UpdateAction each : List.of(new UndoAction(this), new RedoAction(this))) {
            actions.registerAction((IAction) each);
        }
        actions.registerAction(new DeleteAction((org.eclipse.ui.IWorkbenchPart) this));
        actions.registerAction(new SelectAllAction(this));
    }

    @Override
    public void createPartControl(Composite parent) {
        body = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 0;
        body.setLayout(layout);
        open();
    }

    /** Opens the file anew and shows it, or why it cannot be shown. */
    private void open() {
        closeSession();
        for (org.eclipse.swt.widgets.Control child : body.getChildren()) {
            child.dispose();
        }
        bar = new MessageBar(body);
        try {
            session = new Session(ModelFiles.DESIGNS.open(file), StudioSuite.get().near(file.getParent()),
                    domain.getCommandStack(), this::soon);
            showPages();
        } catch (StoreException e) {
            session = null;
            TroublePage.create(body, file.getFileName().toString(), e.getMessage(), cures());
        }
        body.layout(true, true);
    }

    private List<MessageBar.Answer> cures() {
        List<MessageBar.Answer> cures = new ArrayList<>();
        cures.add(new MessageBar.Answer("Try again", this::open));
        try {
            if (ModelFiles.DESIGNS.lastGood(file).isPresent()) {
                cures.add(new MessageBar.Answer("Open the last good copy", this::recoverLastGood));
            }
        } catch (StoreException e) {
            ILog.of(DesignEditor.class).warn("The last good copy could not be looked for", e);
        }
        cures.add(new MessageBar.Answer("Show in folder", () -> Program.launch(file.getParent().toString())));
        return cures;
    }

    private void recoverLastGood() {
        try {
            ModelFiles.DESIGNS.recover(file);
            open();
        } catch (StoreException e) {
            MessageDialog.openError(getSite().getShell(), "Last good copy", e.getMessage());
        }
    }

    private void showPages() {
        CommandStack history = domain.getCommandStack();
        history.addCommandStackEventListener(listening);
        session.add(listening);
        tabs = new CTabFolder(body, SWT.BOTTOM | SWT.FLAT);
        tabs.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        for (String face : faces()) {
            SidePage page = new SidePage(tabs, session, face, domain, pointers);
            pages.put(face, page);
            live.put(face, new LiveFindings(page, session));
            CTabItem tab = new CTabItem(tabs, SWT.NONE);
            tab.setText(Character.toUpperCase(face.charAt(0)) + face.substring(1));
            tab.setControl(page.control());
            tab.setData(face);
        }
        tabs.setSelection(0);
        tabs.addListener(SWT.Selection, event -> selection.show(page()));
        selection.show(page());
        session.start();
        offerKept();
    }

    private List<String> faces() {
        try {
            return session.suite().item(session.design().getProduct()).faces().stream().map(ItemFace::name).toList();
        } catch (ItemException e) {
            bar.show(TROUBLE, e.getMessage());
            List<String> names = session.design().getSides().stream().map(each -> each.getName()).toList();
            return names.isEmpty() ? List.of("front") : names;
        }
    }

    private void offerKept() {
        try {
            recovery.kept(file).ifPresent(bytes -> bar.show(KEPT,
                    "Work on this design was not saved when the program ended.",
                    new MessageBar.Answer("Bring it back", () -> bringBack(bytes)),
                    new MessageBar.Answer("Throw it away", keeping::drop)));
        } catch (IOException e) {
            ILog.of(DesignEditor.class).warn("Unsaved work could not be looked for", e);
        }
    }

    private void bringBack(byte[] bytes) {
        try {
            Design kept = ModelFiles.DESIGNS.read(new java.io.ByteArrayInputStream(bytes), file.toString());
            session.run(new BringBackCommand("Bring back unsaved work", session.design(), kept));
        } catch (StoreException e) {
            bar.show(KEPT, "The unsaved work cannot be read and is left where it is. " + e.getMessage());
        }
    }

    private void soon(Runnable run) {
        Display display = getSite().getShell() == null ? null : getSite().getShell().getDisplay();
        if (display != null && !display.isDisposed()) {
            display.asyncExec(() -> {
                if (body != null && !body.isDisposed()) {
                    run.run();
                }
            });
        }
    }

    /** The page in front. */
    public SidePage page() {
        return pages.get(face());
    }

    /** The findings over the page in front. */
    public LiveFindings live() {
        return live.get(face());
    }

    /** The pages by face. */
    public List<SidePage> pages() {
        return List.copyOf(pages.values());
    }

    /** An action by its id; null when there is none. */
    public IAction action(String id) {
        return actions.getAction(id);
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        if (session == null) {
            return;
        }
        try {
            session.save();
            firePropertyChange(PROP_DIRTY);
        } catch (ChangedOnDiskException e) {
            askAboutDisk();
        } catch (StoreException e) {
            monitor.setCanceled(true);
            MessageDialog.openError(getSite().getShell(), "Not saved", e.getMessage());
        }
        if (!isDirty()) {
            keeping.drop();
            refreshResource(monitor);
        }
    }

    private void askAboutDisk() {
        int answer = MessageDialog.open(MessageDialog.QUESTION, getSite().getShell(), "Changed on disk",
                file.getFileName() + " was changed by another program since it was opened. Overwriting keeps the other "
                        + "version as the last good copy; reading it anew gives up your changes.",
                SWT.NONE, "Overwrite", "Read anew", "Cancel");
        try {
            if (answer == 0) {
                session.overwrite();
                firePropertyChange(PROP_DIRTY);
            } else if (answer == 1) {
                readAnew();
            }
        } catch (StoreException e) {
            MessageDialog.openError(getSite().getShell(), "Not saved", e.getMessage());
        }
    }

    private void readAnew() {
        keeping.drop();
        domain.getCommandStack().flush();
        open();
        firePropertyChange(PROP_DIRTY);
    }

    private void refreshResource(IProgressMonitor monitor) {
        IFile resource = getEditorInput().getAdapter(IFile.class);
        if (resource != null) {
            try {
                resource.refreshLocal(0, monitor);
            } catch (org.eclipse.core.runtime.CoreException e) {
                ILog.of(DesignEditor.class).warn("The saved file could not be looked at again", e);
            }
        }
    }

    @Override
    public void doSaveAs() {
        // a copy is made in the jobs view, where its art goes along
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public boolean isDirty() {
        return session != null && domain.getCommandStack().isDirty();
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
        try {
            if (!session.changedOnDisk()) {
                bar.clear(DISK);
            } else if (isDirty()) {
                bar.show(DISK, "Another program changed this file. Saving will ask what to keep.",
                        new MessageBar.Answer("Read anew and give up my changes", this::readAnew));
            } else {
                soon(this::readAnew);
            }
        } catch (StoreException e) {
            bar.show(DISK, e.getMessage());
        }
    }

    @Override
    public <T> T getAdapter(Class<T> type) {
        Object found = null;
        if (type == DesignSession.class || type == Session.class) {
            found = session;
        } else if (type == DesignPages.class) {
            found = session == null ? null : this;
        } else if (type == CommandStack.class) {
            found = domain.getCommandStack();
        } else if (type == ActionRegistry.class) {
            found = actions;
        } else if (type == ZoomManager.class && page() != null) {
            found = page().root().getZoomManager();
        } else if (type == org.eclipse.gef.GraphicalViewer.class && page() != null) {
            found = page().viewer();
        }
        return found != null ? type.cast(found) : super.getAdapter(type);
    }

    @Override
    public void dispose() {
        closeSession();
        keeping.cancel();
        if (!isDirty()) {
            keeping.drop();
        }
        actions.dispose();
        super.dispose();
    }

    private void closeSession() {
        if (session != null) {
            domain.getCommandStack().removeCommandStackEventListener(listening);
            session.close();
        }
        pages.values().stream().filter(page -> !page.control().isDisposed())
                .forEach(page -> domain.removeViewer(page.viewer()));
        pages.clear();
        live.clear();
    }

    @Override
    public String face() {
        return tabs == null || tabs.isDisposed() || tabs.getSelection() == null ? ""
                : (String) tabs.getSelection().getData();
    }

    @Override
    public void show(String face) {
        for (CTabItem tab : tabs.getItems()) {
            if (face.equals(tab.getData()) && tabs.getSelection() != tab) {
                tabs.setSelection(tab);
                selection.show(page());
            }
        }
    }

    @Override
    public void reveal(String face, Envelope place) {
        show(face);
        if (page() != null && !place.isNull()) {
            page().reveal(place);
        }
    }

    @Override
    public List<Mark> selected() {
        return page() == null ? List.of() : page().selected();
    }

    @Override
    public void select(List<? extends Mark> marks) {
        if (page() != null) {
            page().select(marks);
        }
    }

    @Override
    public void add(PointerListener listener) {
        pointers.add(listener);
    }

    @Override
    public void remove(PointerListener listener) {
        pointers.remove(listener);
    }

    private final class Listening implements SessionListener, org.eclipse.gef.commands.CommandStackEventListener {

        @Override
        public void stackChanged(org.eclipse.gef.commands.CommandStackEvent event) {
            if (event.isPostChangeEvent()) {
                firePropertyChange(PROP_DIRTY);
                actions.getActions().forEachRemaining(each -> {
                    if (each instanceof UpdateAction update) {
                        update.update();
                    }
                });
                if (isDirty()) {
                    keeping.keep(EcoreUtil.copy(session.design()));
                }
            }
        }

        @Override
        public void changed() {
            pages.values().forEach(SidePage::refresh);
            tell();
        }

        private void tell() {
            session.trouble().or(session::locked).ifPresentOrElse(each -> bar.show(TROUBLE, each),
                    () -> bar.clear(TROUBLE));
        }

        @Override
        public void known(Known known) {
            pages.values().forEach(each -> each.known(known));
            tell();
        }
    }
}
