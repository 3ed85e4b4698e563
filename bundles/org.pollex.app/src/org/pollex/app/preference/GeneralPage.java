/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.preference;

import java.util.Arrays;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.RadioGroupFieldEditor;
import org.eclipse.jface.preference.StringFieldEditor;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.preferences.ScopedPreferenceStore;
import org.pollex.app.look.Appearance;
import org.pollex.ui.Person;

/** The name under which one works, and whether the window is light or dark. */
public final class GeneralPage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

    private ScopedPreferenceStore own;
    private RadioGroupFieldEditor kept;

    public GeneralPage() {
        super(GRID);
    }

    @Override
    public void init(IWorkbench workbench) {
        ScopedPreferenceStore store = new ScopedPreferenceStore(InstanceScope.INSTANCE, Person.NODE);
        store.setDefault(Person.NAME, System.getProperty("user.name", ""));
        setPreferenceStore(store);
        setDescription("The name is kept with waivers, revisions and sign-offs.");
    }

    @Override
    protected void createFieldEditors() {
        StringFieldEditor name = new StringFieldEditor(Person.NAME, "&Name:", getFieldEditorParent());
        name.setEmptyStringAllowed(false);
        name.setErrorMessage("Fill in a name; waivers and sign-offs need one.");
        addField(name);
        String[][] choices = Arrays.stream(Appearance.values()).map(each -> new String[] {each.label(), each.key()})
                .toArray(String[][]::new);
        RadioGroupFieldEditor appearance = new RadioGroupFieldEditor(Appearance.KEY, "Appearance", 1, choices,
                getFieldEditorParent(), true);
        addField(appearance);
        // addField gives every field the store of the page; this one is kept elsewhere
        ScopedPreferenceStore store = new ScopedPreferenceStore(InstanceScope.INSTANCE, Appearance.NODE);
        store.setDefault(Appearance.KEY, Appearance.SYSTEM.key());
        own = store;
        kept = appearance;
    }

    @Override
    protected void initialize() {
        super.initialize();
        kept.setPreferenceStore(own);
        kept.load();
    }

    @Override
    public boolean performOk() {
        boolean done = super.performOk();
        Appearance.of(own.getString(Appearance.KEY)).choose();
        return done;
    }
}
