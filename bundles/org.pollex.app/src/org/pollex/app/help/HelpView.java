/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.help;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

/** Pages of help with a list of them and a search. Needs neither a browser nor a network. */
public final class HelpView extends ViewPart {

    /** Id of the view. */
    public static final String ID = "org.pollex.app.help";

    private List<HelpPage> pages = List.of();
    private List<HelpPage> listed = List.of();
    private org.eclipse.swt.widgets.List titles;
    private Text search;
    private StyledText text;

    @Override
    public void createPartControl(Composite parent) {
        pages = HelpPages.all();
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
        Composite left = new Composite(sash, SWT.NONE);
        GridLayoutFactory.swtDefaults().applyTo(left);
        new Label(left, SWT.NONE).setText("&Search:");
        search = new Text(left, SWT.SEARCH | SWT.ICON_CANCEL);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(search);
        search.addListener(SWT.Modify, event -> list(search.getText()));
        titles = new org.eclipse.swt.widgets.List(left, SWT.SINGLE | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(titles);
        titles.addListener(SWT.Selection, event -> show());
        text = new StyledText(sash, SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL);
        text.setMargins(16, 12, 16, 12);
        text.setLineSpacing(3);
        sash.setWeights(26, 74);
        list("");
    }

    private void list(String words) {
        String wanted = words.strip().toLowerCase(Locale.ROOT);
        listed = pages.stream().filter(each -> each.text().toLowerCase(Locale.ROOT).contains(wanted)).toList();
        titles.setItems(listed.stream().map(HelpPage::title).toArray(String[]::new));
        if (!listed.isEmpty()) {
            titles.select(0);
        }
        show();
    }

    /** Shows a page by its name, whatever is searched for. */
    void open(String name) {
        search.setText("");
        list("");
        for (int i = 0; i < listed.size(); i++) {
            if (listed.get(i).name().equals(name)) {
                titles.select(i);
            }
        }
        show();
    }

    private void show() {
        int index = titles.getSelectionIndex();
        StringBuilder plain = new StringBuilder();
        List<StyleRange> styles = new ArrayList<>();
        if (index >= 0 && index < listed.size()) {
            listed.get(index).lines().forEach(line -> append(line, plain, styles));
        } else {
            plain.append("No page has these words.");
        }
        text.setText(plain.toString());
        text.setStyleRanges(styles.toArray(StyleRange[]::new));
        text.setTopIndex(0);
    }

    private static void append(String line, StringBuilder plain, List<StyleRange> styles) {
        int start = plain.length();
        if (line.startsWith("#")) {
            plain.append(line.replaceFirst("^#+ *", ""));
            StyleRange style = new StyleRange(start, plain.length() - start, null, null);
            style.font = line.startsWith("##") ? JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT)
                    : JFaceResources.getHeaderFont();
            styles.add(style);
        } else {
            String body = line.startsWith("* ") ? "  \u2022 " + line.substring(2) : line;
            String[] parts = body.split("\\*\\*", -1);
            for (int i = 0; i < parts.length; i++) {
                int at = plain.length();
                plain.append(parts[i]);
                if (i % 2 == 1) {
                    styles.add(new StyleRange(at, parts[i].length(), null, null, SWT.BOLD));
                }
            }
        }
        plain.append('\n');
    }

    /** What is shown now. */
    public String shown() {
        return text.getText();
    }

    @Override
    public void setFocus() {
        titles.setFocus();
    }
}
