/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live.show;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.pollex.editor.live.Limits;
import org.pollex.editor.live.Readout;

/**
 * The numbers of a side in two lines below the drawing, each with its limit and a sign where it is missed. Read aloud,
 * the sign is a word. They are drawn, since a label of the window system lays the whole window out anew when its text
 * changes.
 */
final class ReadoutBar {

    private static final String GOOD = "\u2713 ";
    private static final String BAD = "\u26A0 ";

    private static final double POINT = 0.005;
    /** Widths are measured up to so many times the limit. */
    private static final double FARTHER = 3;

    private static final int COLUMNS = 4;
    /** As wide as any of the numbers gets as long as the print fits. */
    private static final String WIDEST = "Takes 99 % of the safe zone";

    private final GridLayout layout;
    private final CLabel line;
    private final CLabel gap;
    private final CLabel type;
    private final CLabel share;
    private final CLabel speck;
    private final CLabel pinhole;
    private final CLabel wear;

    ReadoutBar(Composite parent) {
        layout = new GridLayout(COLUMNS, true);
        layout.marginHeight = 3;
        layout.verticalSpacing = 2;
        parent.setLayout(layout);
        line = label(parent);
        gap = label(parent);
        type = label(parent);
        share = label(parent);
        speck = label(parent);
        pinhole = label(parent);
        wear = label(parent);
        named(parent, () -> "Numbers of the print: " + aloud(text()));
        parent.addListener(SWT.Resize, event -> columns(parent));
    }

    /** More lines of fewer numbers where the page is narrow, so that none is cut. */
    private void columns(Composite parent) {
        GC gc = new GC(line);
        int widest = gc.textExtent(WIDEST).x + layout.horizontalSpacing;
        gc.dispose();
        int room = parent.getClientArea().width - 2 * layout.marginWidth + layout.horizontalSpacing;
        int now = Math.max(1, Math.min(COLUMNS, room / widest));
        if (now != layout.numColumns) {
            layout.numColumns = now;
            parent.requestLayout();
        }
    }

    private static CLabel label(Composite parent) {
        CLabel label = new CLabel(parent, SWT.NONE);
        label.setMargins(0, 0, 0, 0);
        label.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        named(label, () -> aloud(label.getText()));
        return label;
    }

    private static void named(Control control, Supplier<String> name) {
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = name.get();
            }
        });
    }

    /** Words for the signs. */
    static String aloud(String text) {
        return text.replace(BAD, "Too small: ").replace(GOOD, "").replace(" | ", "; ");
    }

    /**
     * Shows numbers.
     *
     * @param live  whether they are of a gesture, which looks for what is too thin only
     */
    void show(Readout readout, Limits limits, boolean live) {
        double farther = live ? 1 : FARTHER;
        set(line, "Line ", readout.line(), limits.line(), limits.tolerance(), farther);
        set(gap, "Gap ", readout.gap(), limits.gap(), limits.tolerance(), farther);
        if (readout.type().isEmpty()) {
            set(type, "No lettering");
        } else {
            measured(type, "x-height ", readout.type().getAsDouble(), limits.type(), limits.tolerance());
        }
        set(share, readout.share().isEmpty() ? "Nothing printed" : String.format(Locale.ROOT,
                "Takes %.0f %% of the safe zone", readout.share().getAsDouble() * 100));
        set(speck, "Dots ", readout.speck(), limits.speck(), limits.tolerance(), farther);
        if (readout.pinhole().isEmpty()) {
            set(pinhole, "No holes");
        } else {
            set(pinhole, "Holes ", readout.pinhole(), limits.pinhole(), limits.tolerance(), farther);
        }
        set(wear, readout.wear().isEmpty() ? "Nothing wears" : String.format(Locale.ROOT,
                "Wear takes %.0f %%", readout.wear().getAsDouble() * 100));
    }

    private static void set(CLabel label, String name, OptionalDouble value, double limit, double tolerance,
            double farther) {
        if (value.isEmpty() || value.getAsDouble() > limit * FARTHER) {
            set(label, GOOD + String.format(Locale.ROOT, farther > 1 ? "%sover %.2f mm" : "%sat least %.2f mm", name,
                    value.isEmpty() ? limit * farther : limit * FARTHER));
        } else {
            measured(label, name, value.getAsDouble(), limit, tolerance);
        }
    }

    private static void measured(CLabel label, String name, double value, double limit, double tolerance) {
        // a tip or notch runs out to nothing
        set(label, (value < limit * tolerance ? BAD : GOOD) + (value < POINT ? name + "runs out"
                : String.format(Locale.ROOT, "%s%.2f of %.2f mm", name, value, limit)));
    }

    private static void set(CLabel label, String text) {
        if (!text.equals(label.getText())) {
            label.setText(text);
            label.setToolTipText(text);
        }
    }

    String text() {
        return line.getText() + " | " + gap.getText() + " | " + type.getText() + " | " + share.getText()
                + " | " + speck.getText() + " | " + pinhole.getText() + " | " + wear.getText();
    }
}
