/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** A line above the pages that says what the user should know or decide; takes no room while it is empty. */
final class MessageBar {

    /** A button: its label, and what it does. */
    record Answer(String label, Runnable action) {
    }

    private final Composite bar;
    private String subject = "";

    MessageBar(Composite parent) {
        bar = new Composite(parent, SWT.NONE);
        bar.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        ((GridData) bar.getLayoutData()).exclude = true;
        bar.setVisible(false);
    }

    /**
     * Shows a sentence with answers in place of what was shown. Any answer clears the bar.
     *
     * @param about what it is about, so that it can be taken back by {@link #clear(String)}
     */
    void show(String about, String sentence, Answer... answers) {
        for (Control child : bar.getChildren()) {
            child.dispose();
        }
        subject = about;
        GridLayout layout = new GridLayout(2 + answers.length, false);
        layout.marginHeight = 3;
        bar.setLayout(layout);
        Label sign = new Label(bar, SWT.NONE);
        sign.setText("\u26A0");
        Label text = new Label(bar, SWT.WRAP);
        text.setText(sentence.replace("&", "&&"));
        text.setToolTipText(sentence);
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = 200;
        text.setLayoutData(data);
        for (Answer answer : answers) {
            Button button = new Button(bar, SWT.PUSH);
            button.setText(answer.label());
            button.addListener(SWT.Selection, event -> {
                clear(about);
                answer.action().run();
            });
        }
        setShown(true);
    }

    /** Takes back what is shown about a subject. */
    void clear(String about) {
        if (subject.equals(about)) {
            subject = "";
            setShown(false);
        }
    }

    private void setShown(boolean on) {
        ((GridData) bar.getLayoutData()).exclude = !on;
        bar.setVisible(on);
        bar.requestLayout();
    }
}
