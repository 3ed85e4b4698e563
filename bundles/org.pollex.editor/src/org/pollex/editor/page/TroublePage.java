/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.pollex.editor.session.Notices;

/** What the editor shows for a file that cannot be opened: why, and what can be done. */
public final class TroublePage {

    private TroublePage() {
    }

    /** Lays the page out in a parent with a grid of one column. */
    public static Composite create(Composite parent, String name, String sentence, List<Notices.Answer> answers) {
        Composite page = new Composite(parent, SWT.NONE);
        page.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 32;
        layout.marginHeight = 32;
        layout.verticalSpacing = 12;
        page.setLayout(layout);
        Label title = new Label(page, SWT.NONE);
        title.setText(name + " cannot be opened");
        title.setFont(org.eclipse.jface.resource.JFaceResources.getHeaderFont());
        Label text = new Label(page, SWT.WRAP);
        text.setText(sentence.replace("&", "&&"));
        text.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        Composite row = new Composite(page, SWT.NONE);
        GridLayout buttons = new GridLayout(Math.max(1, answers.size()), false);
        buttons.marginWidth = 0;
        row.setLayout(buttons);
        for (Notices.Answer answer : answers) {
            Button button = new Button(row, SWT.PUSH);
            button.setText(answer.label());
            button.addListener(SWT.Selection, event -> answer.action().run());
        }
        return page;
    }
}
