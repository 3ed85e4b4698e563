/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.preference;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.StringFieldEditor;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.preferences.ScopedPreferenceStore;
import org.pollex.ui.Person;

/** The name under which one works. */
public final class GeneralPage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

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
    }
}
