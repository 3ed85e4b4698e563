/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.findings;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.pollex.fixes.Remedies;
import org.pollex.rules.Finding;
import org.pollex.ui.review.Words;
import org.pollex.ui.wayout.WaysOut;

/** One finding in full: what, why it matters, what can be done. */
final class FindingDetail {

    private final ScrolledComposite scroll;
    private final Composite area;
    private final Label severity;
    private final Label message;
    private final Label why;
    private final Composite buttons;
    private final Label said;
    private final Consumer<String> remedy;
    private final Consumer<WaysOut.Offer> way;
    private final Runnable waive;

    /**
     * @param remedy  does a remedy by its id
     * @param way     goes a way out of the finding
     * @param waive   asks for a reason and waives, or takes the waiver back
     */
    FindingDetail(Composite parent, Consumer<String> remedy, Consumer<WaysOut.Offer> way, Runnable waive) {
        this.remedy = remedy;
        this.way = way;
        this.waive = waive;
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        area = new Composite(scroll, SWT.NONE);
        area.setLayout(new GridLayout(1, false));
        scroll.setContent(area);
        severity = new Label(area, SWT.NONE);
        severity.setFont(org.eclipse.jface.resource.JFaceResources.getFontRegistry().getBold(
                org.eclipse.jface.resource.JFaceResources.DEFAULT_FONT));
        message = text();
        buttons = new Composite(area, SWT.NONE);
        RowLayoutFactory.swtDefaults().wrap(true).margins(0, 0).applyTo(buttons);
        buttons.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        said = text();
        why = text();
        scroll.addListener(SWT.Resize, event -> fit());
    }

    private Label text() {
        Label label = new Label(area, SWT.WRAP);
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        data.widthHint = 120;
        label.setLayoutData(data);
        return label;
    }

    /**
     * Shows a finding.
     *
     * @param finding      the one that is selected; empty when none or several are
     * @param selected     how many are selected
     * @param description  why its check matters
     */
    void show(Optional<Finding> finding, int selected, String description) {
        for (Control each : buttons.getChildren()) {
            each.dispose();
        }
        said.setText("");
        severity.setText(finding.map(each -> title(each)).orElse(""));
        message.setText(finding.map(each -> each.message().replace("&", "&&")).orElse(
                selected > 1 ? selected + " findings are selected." : "Select a finding."));
        why.setText(description.replace("&", "&&"));
        finding.ifPresent(each -> {
            for (String id : each.fixes()) {
                button(Remedies.label(id)).addListener(SWT.Selection, event -> remedy.accept(id));
            }
            for (WaysOut.Offer offer : WaysOut.of(each.check())) {
                Button button = button(offer.label());
                button.setToolTipText(offer.description());
                button.addListener(SWT.Selection, event -> way.accept(offer));
            }
            button(each.waived() ? "Take waiver back" : "Waive\u2026").addListener(SWT.Selection,
                    event -> waive.run());
        });
        fit();
    }

    private static String title(Finding finding) {
        return Words.title(finding.severity())
                + (finding.side().isEmpty() ? "" : ", " + finding.side()) + (finding.waived() ? ", waived" : "");
    }

    private Button button(String label) {
        Button button = new Button(buttons, SWT.PUSH);
        button.setText(label);
        return button;
    }

    /** Says how a remedy went. */
    void say(String sentence) {
        if (!said.isDisposed()) {
            said.setText(sentence.replace("&", "&&"));
            fit();
        }
    }

    private void fit() {
        area.layout(true, true);
        scroll.setMinSize(area.computeSize(Math.max(80, scroll.getClientArea().width), SWT.DEFAULT));
    }
}
