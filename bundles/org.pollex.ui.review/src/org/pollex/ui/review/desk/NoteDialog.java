/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.desk;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.pollex.ui.Person;

/** Asks for a note and a name. */
final class NoteDialog extends TitleAreaDialog {

    /** What was answered. */
    record Note(String text, String who) {
    }

    private static final int WIDE = 420;

    private final String title;
    private final String question;
    private final boolean needed;
    private final List<String> open;
    private Text text;
    private Text who;
    private Note note;

    private NoteDialog(Shell shell, String title, String question, boolean needed, List<String> open) {
        super(shell);
        this.title = title;
        this.question = question;
        this.needed = needed;
        this.open = List.copyOf(open);
    }

    /**
     * Asks; empty when it was cancelled.
     *
     * @param open  what is not settled, a line each, to be read before it is answered
     */
    static Optional<Note> ask(Shell shell, String title, String question, boolean noteNeeded, List<String> open) {
        NoteDialog dialog = new NoteDialog(shell, title, question, noteNeeded, open);
        return dialog.open() == OK ? Optional.of(dialog.note) : Optional.empty();
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(title);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        setTitle(title);
        setMessage(question, open.isEmpty() ? IMessageProvider.NONE : IMessageProvider.WARNING);
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(12, 12).applyTo(area);
        for (String each : open) {
            Label line = new Label(area, SWT.WRAP);
            line.setText(each.replace("&", "&&"));
            GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(WIDE, SWT.DEFAULT).applyTo(line);
        }
        new Label(area, SWT.NONE).setText("N&ote:");
        text = new Text(area, SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDE, SWT.DEFAULT).applyTo(text);
        new Label(area, SWT.NONE).setText("&Name:");
        who = new Text(area, SWT.BORDER);
        who.setText(Person.name());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(who);
        text.addListener(SWT.Modify, event -> check());
        who.addListener(SWT.Modify, event -> check());
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, OK, title, true);
        createButton(parent, CANCEL, "Cancel", false);
        check();
    }

    private void check() {
        getButton(OK).setEnabled(!who.getText().isBlank() && !(needed && text.getText().isBlank()));
    }

    @Override
    protected void okPressed() {
        note = new Note(text.getText(), who.getText());
        Person.rename(who.getText());
        super.okPressed();
    }
}
