/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks.swatch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Material;
import org.pollex.model.store.EntryNames;
import org.pollex.ui.inks.EntryIds;

/** Which material a swatch is of: a new one, one of the studio, or one from elsewhere, of which a copy is kept. */
final class MaterialChoice {

    /** Names may be longer than there is room for, pixels. */
    private static final int LEAST = 150;

    private final List<Material> there = new ArrayList<>();
    private final Combo combo;
    private final Text name;

    /**
     * @param own      materials of the studio's catalogue
     * @param others   materials that it sees from elsewhere
     * @param changed  runs when another one is chosen or named
     */
    MaterialChoice(Composite parent, List<Material> own, List<Material> others, Runnable changed) {
        Set<String> ids = EntryIds.of(own);
        there.addAll(own);
        others.stream().filter(each -> !ids.contains(each.getId())).forEach(there::add);
        new Label(parent, SWT.NONE).setText("&Material:");
        combo = new Combo(parent, SWT.READ_ONLY);
        combo.setToolTipText("A material from elsewhere is not changed; a copy with the swatch takes its place");
        combo.add("A new one");
        there.forEach(each -> combo.add(EntryNames.title(each) + (own.contains(each) ? "" : " (a copy of it)")));
        combo.select(0);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(LEAST, SWT.DEFAULT).applyTo(combo);
        new Label(parent, SWT.NONE).setText("&Name:");
        name = new Text(parent, SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(name);
        combo.addListener(SWT.Selection, event -> {
            name.setText(chosen().map(EntryNames::title).orElse(""));
            name.setEnabled(chosen().isEmpty());
            changed.run();
        });
        name.addListener(SWT.Modify, event -> changed.run());
    }

    /** The material that is there already; empty for a new one. */
    Optional<Material> chosen() {
        int index = combo.getSelectionIndex();
        return index <= 0 ? Optional.empty() : Optional.of(there.get(index - 1));
    }

    /** What is missing, in a sentence; empty when nothing is. */
    String trouble() {
        return name.getText().isBlank() ? "Give the material a name." : "";
    }

    /** A material to go on with, in no catalogue; its colour is not known when it is a new one. */
    Material material() {
        if (chosen().isPresent()) {
            return EcoreUtil.copy(chosen().get());
        }
        Material made = CatalogueFactory.eINSTANCE.createMaterial();
        made.setName(name.getText().strip());
        made.setId(EntryIds.free(name.getText(), "material", EntryIds.of(there)));
        return made;
    }
}
