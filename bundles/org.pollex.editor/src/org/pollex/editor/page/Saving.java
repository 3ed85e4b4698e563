/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.pollex.editor.work.Session;
import org.pollex.model.design.Design;
import org.pollex.model.design.Placement;
import org.pollex.model.store.ArtFile;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ChangedOnDiskException;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;

/** Saves a design, and asks when another program changed the file meanwhile. */
final class Saving {

    private static final String ENDING = ".design";

    private final Shell shell;
    private final Session session;

    /** What became of a save. */
    enum Outcome {
        /** The file holds the design. */
        SAVED,
        /** Nothing was written. */
        NOT_SAVED,
        /** The file is to be read anew; the user's state, if it was wanted, is in a copy. */
        READ_ANEW
    }

    /**
     * @param outcome  of the file of the session
     * @param copy     a new file that holds the user's state
     */
    record Saved(Outcome outcome, Optional<Path> copy) {
    }

    Saving(Shell shell, Session session) {
        this.shell = shell;
        this.session = session;
    }

    /** Saves; tells and asks the user what must be told and asked. */
    Saved save() {
        try {
            session.save();
            return new Saved(Outcome.SAVED, Optional.empty());
        } catch (ChangedOnDiskException e) {
            return ask();
        } catch (StoreException e) {
            MessageDialog.openError(shell, "Not saved", e.getMessage());
            return new Saved(Outcome.NOT_SAVED, Optional.empty());
        }
    }

    private Saved ask() {
        Path file = session.file();
        int answer = MessageDialog.open(MessageDialog.QUESTION, shell, "Changed on disk", file.getFileName()
                + " was changed by another program since it was opened. Overwriting keeps the other version as the"
                + " last good copy beside it; reading it anew gives up your changes; keeping both saves yours as a"
                + " copy.",
                SWT.NONE, "Overwrite", "Keep both", "Read anew", "Cancel");
        try {
            return switch (answer) {
                case 0 -> {
                    session.overwrite();
                    yield new Saved(Outcome.SAVED, Optional.empty());
                }
                case 1 -> new Saved(Outcome.READ_ANEW, Optional.of(beside(file)));
                case 2 -> new Saved(Outcome.READ_ANEW, Optional.empty());
                default -> new Saved(Outcome.NOT_SAVED, Optional.empty());
            };
        } catch (StoreException e) {
            MessageDialog.openError(shell, "Not saved", e.getMessage());
            return new Saved(Outcome.NOT_SAVED, Optional.empty());
        }
    }

    private Path beside(Path file) throws StoreException {
        String name = file.getFileName().toString();
        String bare = name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
        for (int number = 1;; number++) {
            Path copy = file.resolveSibling(bare + (number == 1 ? " copy" : " copy " + number) + ENDING);
            if (!Files.exists(copy)) {
                ModelFiles.DESIGNS.create(EcoreUtil.copy(session.design()), copy);
                return copy;
            }
        }
    }

    /** Asks for a file to save to; empty when the user gave up. */
    Optional<Path> askWhere() {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE | SWT.SHEET);
        dialog.setText("Save design as");
        dialog.setFilterPath(session.file().getParent().toString());
        dialog.setFileName(session.file().getFileName().toString());
        dialog.setFilterExtensions(new String[] {"*" + ENDING});
        dialog.setOverwrite(true);
        String named = dialog.open();
        return Optional.ofNullable(named).map(name -> Path.of(name.endsWith(ENDING) ? name : name + ENDING));
    }

    /** Saves a copy with its art to another file; art that is missing here is missing there. Tells what fails. */
    boolean saveAs(Path target) {
        Path from = session.file();
        Design copy = EcoreUtil.copy(session.design());
        try {
            if (!target.toAbsolutePath().getParent().equals(from.toAbsolutePath().getParent())) {
                for (var all = copy.eAllContents(); all.hasNext();) {
                    if (all.next() instanceof Placement placement) {
                        bring(from, target, placement);
                    }
                }
            }
            ModelFiles.DESIGNS.replace(copy, target);
            return true;
        } catch (StoreException e) {
            MessageDialog.openError(shell, "Not saved", e.getMessage());
            return false;
        }
    }

    private static void bring(Path from, Path target, Placement placement) throws StoreException {
        Optional<Path> art = ArtFiles.inside(from, placement.getArt() == null ? "" : placement.getArt());
        if (art.isPresent() && Files.isRegularFile(art.get())) {
            ArtFile adopted = ArtFiles.adopt(target, art.get());
            placement.setArt(adopted.path());
        }
    }
}
