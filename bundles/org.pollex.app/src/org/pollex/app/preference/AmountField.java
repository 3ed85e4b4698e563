/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.preference;

import org.eclipse.jface.preference.StringFieldEditor;
import org.eclipse.swt.widgets.Composite;
import org.pollex.editor.measure.Measure;
import org.pollex.editor.measure.MeasureException;
import org.pollex.editor.setting.Amount;

/** A field for a number that is kept as a preference; sums and lengths with a unit are understood. */
final class AmountField extends StringFieldEditor {

    private static final int WIDTH = 10;

    private final Amount amount;
    private final Measure.Kind kind;

    /** @param kind whether the number is a length in mm */
    AmountField(Amount amount, Measure.Kind kind, String label, Composite parent) {
        super(amount.key(), label, WIDTH, parent);
        this.amount = amount;
        this.kind = kind;
    }

    @Override
    protected boolean doCheckState() {
        try {
            if (amount.allows(read())) {
                return true;
            }
            setErrorMessage("Write a number from " + Measure.show(amount.least()) + " to "
                    + Measure.show(amount.most()) + ".");
        } catch (MeasureException e) {
            setErrorMessage(e.getMessage());
        }
        return false;
    }

    private double read() throws MeasureException {
        return Measure.read(getStringValue(), kind, amount.value());
    }

    @Override
    protected void doLoad() {
        getTextControl().setText(Measure.show(amount.value()));
    }

    @Override
    protected void doLoadDefault() {
        getTextControl().setText(Measure.show(amount.usual()));
        valueChanged();
    }

    @Override
    protected void doStore() {
        try {
            amount.set(read());
        } catch (MeasureException e) {
            // the page cannot be applied while the field shows this
            throw new IllegalStateException(e);
        }
    }
}
