/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.pollex.editor.session.Notices;

/**
 * Lines above the pages that say what the user should know or decide, one for each subject; takes no room while there
 * are none.
 */
public final class MessageBar implements Notices {

    private record Row(String sentence, Composite line) {
    }

    private final Composite bar;
    private final Map<String, Row> rows = new LinkedHashMap<>();

    /** A bar without a line in a layout of one column. */
    public MessageBar(Composite parent) {
        bar = new Composite(parent, SWT.NONE);
        bar.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 0;
        bar.setLayout(layout);
        lay();
    }

    @Override
    public void show(String about, String sentence, Answer... answers) {
        Row before = rows.get(about);
        if (before != null && before.sentence().equals(sentence)) {
            return;
        }
        if (before != null) {
            before.line().dispose();
        }
        Composite line = new Composite(bar, SWT.NONE);
        line.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        GridLayout layout = new GridLayout(2 + answers.length, false);
        layout.marginHeight = 3;
        line.setLayout(layout);
        Label sign = new Label(line, SWT.NONE);
        sign.setText("\u26A0");
        Label text = new Label(line, SWT.WRAP);
        text.setText(sentence.replace("&", "&&"));
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = 200;
        text.setLayoutData(data);
        for (Answer answer : answers) {
            Button button = new Button(line, SWT.PUSH);
            button.setText(answer.label());
            button.addListener(SWT.Selection, event -> {
                clear(about);
                answer.action().run();
            });
        }
        rows.put(about, new Row(sentence, line));
        lay();
    }

    @Override
    public void clear(String about) {
        Row row = rows.remove(about);
        if (row != null) {
            row.line().dispose();
            lay();
        }
    }

    /** Takes back what is shown about subjects whose name begins so. */
    void clearAll(String beginning) {
        rows.keySet().stream().filter(about -> about.startsWith(beginning)).toList().forEach(this::clear);
    }

    private void lay() {
        ((GridData) bar.getLayoutData()).exclude = rows.isEmpty();
        bar.setVisible(!rows.isEmpty());
        bar.requestLayout();
    }
}
