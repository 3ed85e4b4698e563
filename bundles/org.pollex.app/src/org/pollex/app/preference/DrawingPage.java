/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.preference;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.BooleanFieldEditor;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.preferences.ScopedPreferenceStore;
import org.pollex.editor.side.Shown;

/** What shows in drawings besides the art; the same as in the menu View. */
public final class DrawingPage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

    public DrawingPage() {
        super(GRID);
    }

    @Override
    public void init(IWorkbench workbench) {
        ScopedPreferenceStore store = new ScopedPreferenceStore(InstanceScope.INSTANCE, Shown.NODE);
        for (Shown each : Shown.values()) {
            store.setDefault(each.key(), each.usual());
        }
        setPreferenceStore(store);
        setDescription("Shown in every drawing:");
    }

    @Override
    protected void createFieldEditors() {
        add(Shown.RULERS, "&Rulers in mm");
        add(Shown.GRID, "&Grid in mm");
        add(Shown.GUIDES, "G&uides");
        add(Shown.SAFE, "&Safe zone");
        add(Shown.WEAR, "Zone that &wears");
        add(Shown.RIM, "Rim that does not &print");
        add(Shown.LIVE, "&Findings while art is moved, scaled or turned");
    }

    private void add(Shown shown, String label) {
        addField(new BooleanFieldEditor(shown.key(), label, getFieldEditorParent()));
    }
}
