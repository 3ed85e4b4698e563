/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.desk;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.core.resources.IFile;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;
import org.pollex.fixes.Remedies;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;
import org.pollex.ui.review.Words;
import org.pollex.ui.wayout.WaysOut;

/** The column beside the enlarged place: true size, the finding in words, what can be done. Scrolls when it is long. */
final class EntryPane {

    private static final int ACTUAL = 190;
    private static final int NARROWEST = 160;
    private static final int GAP = 8;

    private final ScrolledComposite scroll;
    private final Composite area;
    private final Composite actual;
    private final Label icon;
    private final Label title;
    private final Label owner;
    private final Label print;
    private final Label message;
    private final Label facts;
    private final Label why;
    private final Composite remedies;
    private final Composite buttons;
    private final Label state;
    private final Label said;
    private final Consumer<String> remedy;
    private final Consumer<WaysOut.Offer> way;
    private IFile file;

    /**
     * @param remedy  does a remedy by its id
     * @param way     goes a way out of the finding
     */
    EntryPane(Composite parent, Consumer<String> remedy, Consumer<WaysOut.Offer> way) {
        this.remedy = remedy;
        this.way = way;
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        area = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(area);
        scroll.setContent(area);
        actual = new Composite(area, SWT.NONE);
        actual.setLayout(new FillLayout());
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(SWT.DEFAULT, ACTUAL).applyTo(actual);
        owner = text();
        print = text();
        icon = new Label(area, SWT.NONE);
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.BEGINNING).indent(0, GAP).exclude(true)
                .applyTo(icon);
        title = new Label(area, SWT.WRAP);
        title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROWEST, SWT.DEFAULT).indent(0, GAP).applyTo(title);
        message = text();
        facts = text();
        remedies = row();
        why = text();
        state = text();
        buttons = row();
        said = text();
        scroll.addListener(SWT.Resize, event -> fit());
    }

    private Label text() {
        Label label = new Label(area, SWT.WRAP);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(NARROWEST, SWT.DEFAULT).applyTo(label);
        return label;
    }

    private Composite row() {
        Composite row = new Composite(area, SWT.NONE);
        RowLayoutFactory.swtDefaults().wrap(true).margins(0, 0).applyTo(row);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(NARROWEST, SWT.DEFAULT).applyTo(row);
        return row;
    }

    /** Gives the picture at true size the room it needs; what is below moves down, and scrolls when it must. */
    void actualHeight(int pixels) {
        GridData data = (GridData) actual.getLayoutData();
        int wanted = Math.max(ACTUAL, pixels);
        if (data.heightHint != wanted) {
            data.heightHint = wanted;
            fit();
        }
    }

    /** Where the picture at true size goes. */
    Composite actual() {
        return actual;
    }

    /** Where the buttons of the review go. */
    Composite buttons() {
        return buttons;
    }

    /**
     * Shows an entry; nothing to review for null.
     *
     * @param description  why its check matters
     */
    void show(Entry entry, String description) {
        for (Control each : remedies.getChildren()) {
            each.dispose();
        }
        if (entry == null || !entry.file().equals(file)) {
            // what is said of the same design stays until it is read anew, so that nothing jumps
            owner.setText("");
            print.setText("");
            state.setText("");
        }
        file = entry == null ? null : entry.file();
        if (entry == null) {
            icon(null);
            title.setText("Nothing to review");
            message.setText("Every finding is settled, or there is no design yet.");
            facts.setText("");
            why.setText("");
        } else {
            Finding finding = entry.finding();
            icon(entry.open() ? image(finding.severity()) : null);
            title.setText(escaped((entry.open() ? Words.title(finding.severity()) : "No findings") + " in "
                    + entry.file().getName() + (finding.side().isEmpty() ? "" : ", " + finding.side())
                    + (finding.waived() ? " \u2013 waived" : "")));
            message.setText(escaped(finding.message()));
            facts.setText(Words.measured(finding));
            why.setText(escaped(description));
            for (String id : finding.fixes()) {
                Button button = new Button(remedies, SWT.PUSH);
                button.setText(Remedies.label(id));
                button.addListener(SWT.Selection, event -> remedy.accept(id));
            }
            for (WaysOut.Offer offer : WaysOut.of(finding.check())) {
                Button button = new Button(remedies, SWT.PUSH);
                button.setText(offer.label());
                button.setToolTipText(offer.description());
                button.addListener(SWT.Selection, event -> way.accept(offer));
            }
        }
        fit();
    }

    /** Says whose design it is and how far its review. */
    void facts(DesignFacts of, String reviewed) {
        owner.setText(escaped(of.job()));
        print.setText(escaped(of.print()));
        state.setText(escaped(reviewed));
        fit();
    }

    void say(String sentence) {
        if (!said.isDisposed()) {
            said.setText(escaped(sentence));
            fit();
        }
    }

    boolean isDisposed() {
        return area.isDisposed();
    }

    private void icon(Image image) {
        icon.setImage(image);
        seen(icon, image != null);
        ((GridData) title.getLayoutData()).horizontalSpan = image == null ? 2 : 1;
    }

    private static Image image(Severity severity) {
        return PlatformUI.getWorkbench().getSharedImages().getImage(switch (severity) {
            case ERROR -> ISharedImages.IMG_OBJS_ERROR_TSK;
            case WARNING -> ISharedImages.IMG_OBJS_WARN_TSK;
            default -> ISharedImages.IMG_OBJS_INFO_TSK;
        });
    }

    private static String escaped(String text) {
        return text.replace("&", "&&");
    }

    private static void seen(Control control, boolean on) {
        control.setVisible(on);
        ((GridData) control.getLayoutData()).exclude = !on;
    }

    /** Lines without words take no room. */
    private void fit() {
        for (Label each : List.of(owner, print, message, facts, why, state, said)) {
            seen(each, !each.getText().isEmpty());
        }
        seen(remedies, remedies.getChildren().length > 0);
        area.layout(true, true);
        scroll.setMinSize(area.computeSize(Math.max(NARROWEST, scroll.getClientArea().width), SWT.DEFAULT));
    }
}
