/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.gef.commands.CommandStack;
import org.pollex.edit.AddInkCommand;
import org.pollex.edit.ChangeInkCommand;
import org.pollex.edit.RemoveInkCommand;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.model.store.Catalogues;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.model.store.StoreException;

/**
 * A catalogue that is open, and what else a design beside it sees: the shipped inks and those of catalogues around it.
 * Belongs to the window's thread.
 */
final class InkBook {

    /** Words that designs use where an ink is named and no ink is meant. */
    private static final Set<String> RESERVED = Set.of("bare", "process", "none");

    private final CommandStack history;
    private final Catalogues shipped;
    private final Catalogues around;
    private Opened<Catalogue> opened;
    private boolean unsaved;

    /**
     * @param shipped  what the installed catalogues have
     * @param around   what a design beside the file sees of all other catalogues
     */
    InkBook(Opened<Catalogue> opened, Catalogues shipped, Catalogues around, CommandStack history) {
        this.shipped = shipped;
        this.opened = opened;
        this.history = history;
        this.around = around;
    }

    Path file() {
        return opened.path();
    }

    Opened<Catalogue> opened() {
        return opened;
    }

    /** Inks of the file. */
    List<Ink> own() {
        return List.copyOf(opened.model().getInks());
    }

    /** Inks from elsewhere that the file does not replace. */
    List<Ink> others() {
        Set<String> ids = EntryIds.of(own());
        return around.inks().stream().filter(each -> !ids.contains(each.getId())).toList();
    }

    boolean isOwn(Ink ink) {
        return ink != null && ink.eContainer() == opened.model();
    }

    /** Where an ink is kept, in words. */
    String place(Ink ink) {
        if (!isOwn(ink)) {
            return shipped.ink(ink.getId()).orElse(null) == ink ? "shipped" : "another file";
        }
        return around.ink(ink.getId()).isPresent() ? "here, replaces" : "here";
    }

    /** Materials that a design beside the file can be printed on. */
    List<Material> materials() {
        return around.with(opened.model()).materials();
    }

    boolean dirty() {
        return unsaved || history.isDirty();
    }

    /** Adds an ink without colours. */
    Ink add(String name) {
        return put(CatalogueFactory.eINSTANCE.createInk(), name, own().size());
    }

    /** Adds a copy of an ink under a name and an id of its own. */
    Ink duplicate(Ink ink, String name) {
        return put(EcoreUtil.copy(ink), name, isOwn(ink) ? own().indexOf(ink) + 1 : own().size());
    }

    /** Adds a copy of an ink from elsewhere under its id, so that it takes its place in designs. */
    Ink bring(Ink ink) {
        Ink copy = EcoreUtil.copy(ink);
        history.execute(new AddInkCommand(opened.model(), copy, own().size()));
        return copy;
    }

    private Ink put(Ink ink, String name, int index) {
        ink.setName(name);
        Set<String> taken = EntryIds.of(own(), around.inks());
        taken.addAll(RESERVED);
        ink.setId(EntryIds.free(name, "ink", taken));
        history.execute(new AddInkCommand(opened.model(), ink, index));
        return ink;
    }

    void remove(Ink ink) {
        history.execute(new RemoveInkCommand(opened.model(), ink));
    }

    /** Changes an ink of the file, if it is not so already. */
    void change(String label, Ink ink, ChangeInkCommand.Values values) {
        if (isOwn(ink) && !values.equals(ChangeInkCommand.Values.of(ink))) {
            history.execute(new ChangeInkCommand(label, ink, values));
        }
    }

    /**
     * Saves where the catalogue came from.
     *
     * @throws org.pollex.model.store.ChangedOnDiskException when somebody else changed the file since
     */
    void save() throws StoreException {
        opened = ModelFiles.CATALOGUES.save(opened);
        saved();
    }

    /** Saves over whatever is in the file now. */
    void overwrite() throws StoreException {
        opened = ModelFiles.CATALOGUES.replace(opened.model(), opened.path());
        saved();
    }

    private void saved() {
        unsaved = false;
        history.markSaveLocation();
    }

    /** Says that what is open is not what is in the file. */
    void notSaved() {
        unsaved = true;
    }
}
