/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.listing;

import java.util.List;
import org.pollex.making.session.Refusal;
import org.pollex.model.store.Catalogues;
import org.pollex.output.report.Plain;
import org.pollex.rules.Suite;

/** Lists one kind of thing that the suite knows, contributions and the studio's own catalogue included. */
public final class Lister {

    private final Suite suite;

    /** Lists from a suite. */
    public Lister(Suite suite) {
        this.suite = suite;
    }

    /** An array of objects with {@code id}, {@code name} and the numbers that checks use, as UTF-8. */
    public byte[] json(Kind kind) throws Refusal {
        Catalogues known = suite.catalogues();
        return switch (kind) {
            case FAMILIES -> EntryJson.of(known.families(), EntryJson::family);
            case PRODUCTS -> EntryJson.of(new ItemJson(suite).built(), ItemJson::write);
            case MATERIALS -> EntryJson.of(known.materials(), EntryJson::material);
            case INKS -> EntryJson.of(known.inks(), EntryJson::ink);
            case METHODS -> EntryJson.of(known.methods(), EntryJson::method);
            case CHECKS -> EntryJson.of(suite.checks(), EntryJson::check);
        };
    }

    /** Lines of a table. */
    public List<String> lines(Kind kind) throws Refusal {
        Catalogues known = suite.catalogues();
        Table table = new Table();
        switch (kind) {
            case FAMILIES -> known.families().forEach(family -> table.row(family.getId(), text(family.getName()),
                    text(family.getDescription())));
            case PRODUCTS -> new ItemJson(suite).built().forEach(item -> table.row(item.product().getId(),
                    text(item.product().getName()), number(item.width()) + " x " + number(item.height()) + " mm",
                    item.faces().size() == 1 ? "1 side" : item.faces().size() + " sides"));
            case MATERIALS -> known.materials().forEach(material -> table.row(material.getId(),
                    text(material.getName()), "Lab " + material.getLab()));
            case INKS -> known.inks().forEach(ink -> table.row(ink.getId(), text(ink.getName()),
                    ink.getKind().getLiteral(), "Lab " + ink.getLab()));
            case METHODS -> known.methods().forEach(method -> table.row(method.getId(), text(method.getName()),
                    "line " + number(method.getLineMin()) + ", gap " + number(method.getGapMin()) + ", x-height "
                            + number(method.getTypeMin()) + " mm", method.isFullColour() ? "full colour"
                            : method.getInksMax() == 1 ? "1 ink" : "up to " + method.getInksMax() + " inks"));
            case CHECKS -> suite.checks().forEach(check -> table.row(check.id(), check.name()));
        }
        return table.lines();
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }

    private static String number(double value) {
        return Plain.number(value);
    }
}
