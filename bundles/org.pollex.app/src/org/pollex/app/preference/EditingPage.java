/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.preference;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.RadioGroupFieldEditor;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.preferences.ScopedPreferenceStore;
import org.pollex.editor.measure.Measure.Kind;
import org.pollex.editor.setting.Amount;
import org.pollex.editor.setting.Choices;
import org.pollex.editor.setting.LeastShown;
import org.pollex.editor.setting.LengthUnit;
import org.pollex.rules.Severity;

/** Steps, distances and units of working in drawings; what is chosen counts at once. */
public final class EditingPage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

    public EditingPage() {
        super(GRID);
    }

    @Override
    public void init(IWorkbench workbench) {
        ScopedPreferenceStore store = new ScopedPreferenceStore(InstanceScope.INSTANCE, Choices.NODE);
        store.setDefault(LengthUnit.KEY, LengthUnit.MM.name());
        store.setDefault(LeastShown.KEY, LeastShown.USUAL.name());
        setPreferenceStore(store);
    }

    @Override
    protected void createFieldEditors() {
        add(Amount.GRID_STEP, Kind.LENGTH, "&Grid lines every, mm (0: as fine as fits):");
        add(Amount.SNAP_PIXELS, Kind.NUMBER, "&Keep to lines nearer than, pixels (0: never):");
        add(Amount.STEP, Kind.LENGTH, "A&rrow keys move by, mm:");
        add(Amount.FAR_STEP, Kind.LENGTH, "Arrow keys with &Shift move by, mm:");
        add(Amount.KEEP_SECONDS, Kind.NUMBER, "Keep a &copy of unsaved work after, seconds:");
        addField(new RadioGroupFieldEditor(LengthUnit.KEY, "Lengths in fields", 2, new String[][] {
            {"&Millimetres", LengthUnit.MM.name()}, {"&Inches", LengthUnit.INCH.name()}}, getFieldEditorParent(),
                true));
        addField(new RadioGroupFieldEditor(LeastShown.KEY, "Findings marked in the drawing", 1, new String[][] {
            {"&Errors only", Severity.ERROR.name()}, {"Errors and &warnings", Severity.WARNING.name()},
            {"&Notes too", Severity.INFO.name()}}, getFieldEditorParent(), true));
    }

    private void add(Amount amount, Kind kind, String label) {
        addField(new AmountField(amount, kind, label, getFieldEditorParent()));
    }
}
