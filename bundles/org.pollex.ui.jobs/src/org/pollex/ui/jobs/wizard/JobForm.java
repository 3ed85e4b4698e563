/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.wizard;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DateTime;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Text;
import org.pollex.making.job.JobFacts;
import org.pollex.model.job.Use;

/** Fields for what a studio writes down about a job. */
final class JobForm {

    private static final int MOST = 10_000_000;
    private static final int NOTE_HEIGHT = 60;

    private final Text title;
    private final Text client;
    private final Combo use;
    private final Spinner quantity;
    private final Button hasDue;
    private final DateTime due;
    private final Text note;

    JobForm(Composite parent, JobFacts facts, Runnable changed) {
        Composite area = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(area);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(0, 0).spacing(10, 8).applyTo(area);
        title = text(area, "&Title:", facts.title());
        client = text(area, "&Client:", facts.client());
        label(area, "&Use:");
        use = new Combo(area, SWT.READ_ONLY);
        for (Use each : Use.values()) {
            use.add(words(each));
        }
        use.select(facts.use().ordinal());
        label(area, "&Quantity:");
        Composite pieces = row(area);
        quantity = new Spinner(pieces, SWT.BORDER);
        quantity.setValues(facts.quantity(), 0, MOST, 0, 50, 500);
        GridDataFactory.swtDefaults().hint(120, SWT.DEFAULT).applyTo(quantity);
        new Label(pieces, SWT.NONE).setText("pieces in all; 0 when not known yet");
        hasDue = new Button(area, SWT.CHECK);
        hasDue.setText("&Due on:");
        due = new DateTime(area, SWT.DATE | SWT.DROP_DOWN | SWT.BORDER);
        hasDue.setSelection(facts.due().isPresent());
        facts.due().ifPresent(day -> due.setDate(day.getYear(), day.getMonthValue() - 1, day.getDayOfMonth()));
        due.setEnabled(hasDue.getSelection());
        Label noteLabel = label(area, "&Note:");
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(noteLabel);
        note = new Text(area, SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
        note.setText(facts.note());
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, NOTE_HEIGHT).applyTo(note);
        hasDue.addListener(SWT.Selection, event -> {
            due.setEnabled(hasDue.getSelection());
            changed.run();
        });
        title.addModifyListener(event -> changed.run());
        client.addModifyListener(event -> changed.run());
    }

    /** What the fields say. */
    JobFacts facts() {
        return new JobFacts(title.getText(), client.getText(), Use.values()[use.getSelectionIndex()],
                quantity.getSelection(), hasDue.getSelection()
                        ? Optional.of(LocalDate.of(due.getYear(), due.getMonth() + 1, due.getDay()))
                        : Optional.empty(), note.getText());
    }

    /** What is missing, in a sentence. */
    Optional<String> missing() {
        return title.getText().isBlank() ? Optional.of("Write a title for the job.") : Optional.empty();
    }

    void focus() {
        title.setFocus();
    }

    private static String words(Use use) {
        String word = use.getLiteral();
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }

    static Label label(Composite parent, String words) {
        Label label = new Label(parent, SWT.NONE);
        label.setText(words);
        return label;
    }

    static Composite row(Composite parent) {
        Composite row = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(8, 0).applyTo(row);
        return row;
    }

    private static Text text(Composite parent, String words, String value) {
        label(parent, words);
        Text text = new Text(parent, SWT.BORDER);
        text.setText(value);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        return text;
    }
}
