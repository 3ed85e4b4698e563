/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.commands.CommandStackEvent;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.EditorPart;
import org.pollex.edit.BringBackCommand;
import org.pollex.edit.ChangeInkCommand;
import org.pollex.editor.page.HistoryActions;
import org.pollex.editor.page.InputFile;
import org.pollex.editor.page.MessageBar;
import org.pollex.editor.page.TroublePage;
import org.pollex.editor.work.Unsaved;
import org.pollex.markers.StudioSuite;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.store.Catalogues;
import org.pollex.model.store.ChangedOnDiskException;
import org.pollex.model.store.EntryNames;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.model.store.StoreException;

/**
 * Edits the inks of one catalogue file. Everything is a command that can be taken back; saving replaces the whole file
 * or nothing. Inks of other catalogues are shown and can be copied here, never changed. Unsaved work is kept apart and
 * offered back after the program was killed.
 */
public final class InkEditor extends EditorPart {

    /** Id under which the editor is contributed. */
    public static final String ID = "org.pollex.ui.inks.editor";

    private static final String TROUBLE = "trouble";
    private static final String DISK = "disk";
    private static final String UNFIT = "unfit";

    private final CommandStack history = new CommandStack();
    private final Listener returning = event -> lookAtDisk();
    private Composite body;
    private MessageBar bar;
    private InkPage page;
    private InkBook book;
    private Path file;
    private HistoryActions actions;
    private Unsaved<Catalogue> unsaved;
    private Ink wanted;

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
        file = InputFile.required(input);
        unsaved = new Unsaved<>(file, ModelFiles.CATALOGUES);
        setTitleToolTip(file.toString());
        actions = new HistoryActions(this);
        history.addCommandStackEventListener(this::changed);
        site.getShell().addListener(SWT.Activate, returning);
    }

    @Override
    public void createPartControl(Composite parent) {
        body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(body);
        open();
    }

    /** Opens the file and shows it, or why it cannot be shown. */
    private void open() {
        try {
            show(ModelFiles.CATALOGUES.open(file));
        } catch (StoreException e) {
            trouble(e);
        }
    }

    private void trouble(StoreException why) {
        book = null;
        page = null;
        clear();
        List<MessageBar.Answer> cures = new ArrayList<>();
        try {
            if (ModelFiles.CATALOGUES.lastGood(file).isPresent()) {
                cures.add(new MessageBar.Answer("Open the last good copy", this::recover));
            }
        } catch (StoreException e) {
            ILog.of(InkEditor.class).warn("The last good copy could not be looked for", e);
        }
        cures.add(new MessageBar.Answer("Try again", this::open));
        TroublePage.create(body, file.getFileName().toString(), why.getMessage(), cures);
        body.layout(true, true);
        firePropertyChange(PROP_DIRTY);
    }

    private void recover() {
        try {
            show(ModelFiles.CATALOGUES.recover(file));
            book.notSaved();
            bar.show(TROUBLE, "This is the last good copy. Saving puts it in place of the damaged file.");
            firePropertyChange(PROP_DIRTY);
        } catch (StoreException e) {
            open();
        }
    }

    private void clear() {
        for (Control child : body.getChildren()) {
            child.dispose();
        }
    }

    private void show(Opened<Catalogue> opened) {
        clear();
        history.flush();
        bar = new MessageBar(body);
        Catalogues shipped = StudioSuite.get().catalogues();
        Catalogues around;
        String unread = "";
        try {
            around = StudioSuite.get().nearWithout(file).catalogues();
        } catch (StoreException e) {
            around = shipped;
            unread = e.getMessage();
        }
        book = new InkBook(opened, shipped, around, history);
        page = new InkPage(body, book, new Doing());
        page.refresh(wanted);
        if (!unread.isEmpty()) {
            bar.show(TROUBLE, unread);
        }
        unsaved.offer(opened, bar, work -> history.execute(new BringBackCommand("Bring back unsaved work",
                opened.model(), work)));
        body.layout(true, true);
        firePropertyChange(PROP_DIRTY);
    }

    /** What the page asks for. */
    private final class Doing implements InkPage.Doing {

        @Override
        public void add() {
            name("New ink", "").ifPresent(each -> choose(book.add(each)));
        }

        @Override
        public void duplicate(Ink ink) {
            name("Duplicate ink", EntryNames.of(ink) + " copy").ifPresent(each -> choose(book.duplicate(ink, each)));
        }

        @Override
        public void bring(Ink ink) {
            choose(book.bring(ink));
        }

        @Override
        public void remove(Ink ink) {
            book.remove(ink);
        }

        @Override
        public void change(String label, Ink ink, ChangeInkCommand.Values values) {
            book.change(label, ink, values);
        }

        @Override
        public void typing() {
            if (page != null && page.trouble().isEmpty()) {
                bar.clear(UNFIT);
            }
            firePropertyChange(PROP_DIRTY);
        }

        private void choose(Ink ink) {
            page.refresh(ink);
            page.edit();
        }

        private Optional<String> name(String title, String proposed) {
            InputDialog dialog = new InputDialog(getSite().getShell(), title, "Name of the ink:", proposed,
                    text -> text.isBlank() ? "" : null);
            return dialog.open() == Window.OK ? Optional.of(dialog.getValue().strip()) : Optional.empty();
        }
    }

    private void changed(CommandStackEvent event) {
        if (event.isPostChangeEvent()) {
            if (page != null) {
                page.refresh(null);
            }
            actions.update();
            if (book != null) {
                unsaved.changed(book.opened(), book.dirty());
            }
            firePropertyChange(PROP_DIRTY);
        }
    }

    /** An action by its id; null when there is none. */
    IAction action(String id) {
        return actions.action(id);
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        if (book == null) {
            return;
        }
        page.flush();
        Optional<String> wrong = page.trouble();
        if (wrong.isPresent()) {
            bar.show(UNFIT, "Not saved. " + wrong.get());
            page.editWrong();
            monitor.setCanceled(true);
            return;
        }
        try {
            if (!write()) {
                monitor.setCanceled(true);
                return;
            }
            unsaved.drop();
            bar.clear(TROUBLE);
            bar.clear(UNFIT);
            bar.clear(DISK);
        } catch (StoreException e) {
            MessageDialog.openError(getSite().getShell(), "Not saved", e.getMessage());
            monitor.setCanceled(true);
        }
        firePropertyChange(PROP_DIRTY);
        refreshResource(monitor);
    }

    /** Saves, and asks when another program changed the file; whether the file holds what is shown. */
    private boolean write() throws StoreException {
        try {
            book.save();
            return true;
        } catch (ChangedOnDiskException e) {
            int answer = new MessageDialog(getSite().getShell(), "Changed on disk", null, e.getMessage(),
                    MessageDialog.QUESTION, 0, "Replace the file", "Read anew and give up my changes", "Cancel").open();
            if (answer == 0) {
                book.overwrite();
                return true;
            }
            if (answer == 1) {
                open();
                return true;
            }
            return false;
        }
    }

    /** Designs that see the catalogue are checked again when the workspace learns of the change. */
    private void refreshResource(IProgressMonitor monitor) {
        IFile resource = getEditorInput().getAdapter(IFile.class);
        if (resource != null) {
            try {
                resource.refreshLocal(0, monitor);
            } catch (CoreException e) {
                ILog.of(InkEditor.class).warn("The saved file could not be looked at again", e);
            }
        }
    }

    /** Looks in the background whether another program changed the file. */
    private void lookAtDisk() {
        if (book == null || body == null || body.isDisposed()) {
            return;
        }
        Opened<Catalogue> now = book.opened();
        Job looking = Job.createSystem("Looking for changes of " + file.getFileName(), monitor -> {
            boolean other = false;
            String trouble = "";
            try {
                other = ModelFiles.CATALOGUES.changedOnDisk(now);
            } catch (StoreException e) {
                trouble = e.getMessage();
            }
            told(now, other, trouble);
            return Status.OK_STATUS;
        });
        looking.setPriority(Job.SHORT);
        looking.schedule();
    }

    private void told(Opened<Catalogue> seen, boolean other, String trouble) {
        getSite().getShell().getDisplay().asyncExec(() -> {
            if (body.isDisposed() || book == null || book.opened() != seen) {
                return;
            }
            if (!trouble.isEmpty()) {
                bar.show(DISK, trouble);
            } else if (!other) {
                bar.clear(DISK);
            } else if (isDirty()) {
                bar.show(DISK, "Another program changed this file; saving will ask what to keep.",
                        new MessageBar.Answer("Read anew and give up my changes", this::open));
            } else {
                open();
            }
        });
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("A catalogue is saved where it is.");
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public boolean isDirty() {
        return book != null && (book.dirty() || page != null && page.pending());
    }

    @Override
    public void setFocus() {
        if (page != null) {
            page.setFocus();
        } else if (body != null) {
            body.setFocus();
        }
        lookAtDisk();
    }

    @Override
    public <T> T getAdapter(Class<T> type) {
        return type == CommandStack.class ? type.cast(history) : super.getAdapter(type);
    }

    @Override
    public void dispose() {
        getSite().getShell().removeListener(SWT.Activate, returning);
        if (book != null) {
            unsaved.drop();
        }
        actions.dispose();
        history.dispose();
        super.dispose();
    }
}
