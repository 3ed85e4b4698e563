/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live.show;

import java.util.Locale;
import java.util.OptionalDouble;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.pollex.editor.live.Limits;
import org.pollex.editor.live.Readout;

/** The four numbers of a side in a line below the drawing, each with its limit and a sign where it is missed. */
final class ReadoutBar {

    private static final String GOOD = "\u2713 ";
    private static final String BAD = "\u26A0 ";

    private static final double POINT = 0.005;

    private final Label line;
    private final Label gap;
    private final Label type;
    private final Label share;

    ReadoutBar(Composite parent) {
        GridLayout layout = new GridLayout(4, false);
        layout.marginHeight = 3;
        parent.setLayout(layout);
        line = label(parent);
        gap = label(parent);
        type = label(parent);
        share = label(parent);
    }

    private static Label label(Composite parent) {
        Label label = new Label(parent, SWT.NONE);
        label.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        return label;
    }

    void show(Readout readout, Limits limits) {
        set(line, "Line ", readout.line(), limits.line(), limits.tolerance(), 3);
        set(gap, "Gap ", readout.gap(), limits.gap(), limits.tolerance(), 3);
        if (readout.type().isEmpty()) {
            set(type, "No lettering");
        } else {
            set(type, "x-height ", readout.type(), limits.type(), limits.tolerance(), 0);
        }
        set(share, readout.share().isEmpty() ? "Nothing printed" : String.format(Locale.ROOT,
                "Takes %.0f %% of the safe zone", readout.share().getAsDouble() * 100));
    }

    private static void set(Label label, String name, OptionalDouble value, double limit, double tolerance,
            double farther) {
        if (value.isEmpty()) {
            set(label, GOOD + String.format(Locale.ROOT, "%sover %.2f mm", name, limit * farther));
        } else {
            boolean bad = value.getAsDouble() < limit * tolerance;
            // a tip or notch runs out to nothing
            set(label, (bad ? BAD : GOOD) + (value.getAsDouble() < POINT ? name + "runs out"
                    : String.format(Locale.ROOT, "%s%.2f of %.2f mm", name, value.getAsDouble(), limit)));
        }
    }

    private static void set(Label label, String text) {
        if (!text.equals(label.getText())) {
            label.setText(text);
            label.setToolTipText(text);
            if (label.computeSize(SWT.DEFAULT, SWT.DEFAULT).x > label.getSize().x) {
                label.getParent().layout(new Control[] {label});
            }
        }
    }

    String text() {
        return line.getText() + " | " + gap.getText() + " | " + type.getText() + " | " + share.getText();
    }
}
