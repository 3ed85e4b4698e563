/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.property;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.pollex.edit.ChooseInksCommand;
import org.pollex.edit.ChooseMaterialCommand;
import org.pollex.edit.ChooseMethodCommand;
import org.pollex.edit.ChooseProductCommand;
import org.pollex.edit.RenameDesignCommand;
import org.pollex.editor.work.Session;
import org.pollex.model.catalogue.Entry;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;
import org.pollex.model.catalogue.Method;
import org.pollex.model.design.Design;
import org.pollex.model.store.EntryNames;

/** The fields of the whole design. */
final class DesignForm {

    private DesignForm() {
    }

    /** Adds the rows. */
    static void fill(Form form, Session session, Consumer<String> trouble) {
        Design design = session.design();
        form.heading("Design");
        form.text("Name", () -> design.getName() == null ? "" : design.getName(),
                name -> session.run(new RenameDesignCommand(design, name)));
        entry(form, "Product", session.suite().catalogues().products(), design::getProduct,
                id -> session.run(new ChooseProductCommand(design, id)));
        entry(form, "Material", session.suite().catalogues().materials(), design::getMaterial,
                id -> session.run(new ChooseMaterialCommand(design, id)));
        entry(form, "Method", session.suite().catalogues().methods(), design::getMethod,
                id -> session.run(new ChooseMethodCommand(design, id)));
        form.heading("Inks");
        for (Ink ink : session.suite().catalogues().inks()) {
            if (ink.getKind() != InkKind.PROCESS) {
                form.check(EntryNames.title(ink), () -> design.getInks().contains(ink.getId()),
                        on -> ink(form, session, ink, on, trouble));
            }
        }
    }

    private static void ink(Form form, Session session, Ink ink, boolean on, Consumer<String> trouble) {
        List<String> inks = new ArrayList<>(session.design().getInks());
        int most = session.suite().catalogues().method(session.design().getMethod()).map(Method::getInksMax).orElse(0);
        if (on && most > 0 && inks.size() >= most) {
            trouble.accept("This method prints at most " + most + (most == 1 ? " ink" : " inks")
                    + "; take another one out first.");
            form.refresh();
            return;
        }
        trouble.accept("");
        if (on) {
            inks.add(ink.getId());
        } else {
            inks.remove(ink.getId());
        }
        session.run(new ChooseInksCommand(session.design(), inks));
    }

    private static void entry(Form form, String name, List<? extends Entry> entries, Supplier<String> present,
            Consumer<String> take) {
        List<String> ids = entries.stream().map(Entry::getId).toList();
        form.choice(name, entries.stream().map(EntryNames::title).toList(), () -> ids.indexOf(present.get()),
                index -> take.accept(ids.get(index)));
    }
}
