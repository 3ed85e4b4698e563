/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.pollex.artwork.ArtReader;
import org.pollex.artwork.ArtReaders;
import org.pollex.print.item.ItemBuilder;

/** Turns declarations into contributions, one after the other, sorted by bundle; a broken one is noted and skipped. */
final class DeclarationReader {

    static final String CHECKS = "org.pollex.rules.checks";
    static final String FAMILIES = "org.pollex.rules.families";
    static final String CATALOGUES = "org.pollex.rules.catalogues";
    static final List<String> POINTS = List.of(ArtReaders.EXTENSION_POINT, CATALOGUES, FAMILIES, CHECKS);

    private final List<Declaration> declarations;
    private final Contributions.Collector collector;

    DeclarationReader(List<Declaration> declarations, Contributions.Collector collector) {
        this.declarations = declarations.stream().sorted(Comparator.comparing(Declaration::contributor)).toList();
        this.collector = collector;
    }

    void read() {
        each(ArtReaders.EXTENSION_POINT, "reader", declaration -> collector.with(reader(declaration)));
        each(CATALOGUES, "catalogue", declaration -> collector.with(catalogue(declaration)));
        each(FAMILIES, "family", declaration -> collector.with(family(declaration)));
        each(CHECKS, "check", declaration -> collector.with(check(declaration)));
    }

    private void each(String point, String element, Consumer<Declaration> take) {
        for (Declaration declaration : declarations) {
            if (!declaration.point().equals(point)) {
                continue;
            }
            if (!declaration.element().equals(element)) {
                collector.problem(declaration.contributor(), "element <" + declaration.element()
                        + "> stands where <" + element + "> is expected; correct plugin.xml");
                continue;
            }
            try {
                take.accept(declaration);
            } catch (RuntimeException | LinkageError e) {
                collector.problem(declaration.contributor(), e.getMessage());
            }
        }
    }

    private static ArtReaders.Entry reader(Declaration declaration) {
        String id = declaration.need("id");
        String priority = declaration.attributes().getOrDefault("priority", "0").strip();
        if (!priority.matches("-?\\d{1,9}")) {
            throw new IllegalArgumentException("the priority \"" + priority + "\" of art reader " + id
                    + " is not a whole number; correct plugin.xml");
        }
        List<String> endings = Arrays.stream(declaration.attributes().getOrDefault("fileExtensions", "")
                .toLowerCase(Locale.ROOT).split("[,\\s]+")).filter(ending -> !ending.isBlank()).toList();
        return new ArtReaders.Entry(id, declaration.attributes().getOrDefault("name", id), Integer.parseInt(priority),
                endings, declaration.make(ArtReader.class));
    }

    private static CheckEntry check(Declaration declaration) {
        declaration.need("class");
        return new CheckEntry(declaration.need("id"), declaration.need("name"), declaration.need("description"),
                declaration.contributor(), () -> declaration.make(Check.class));
    }

    private static FamilyEntry family(Declaration declaration) {
        declaration.need("class");
        return new FamilyEntry(declaration.need("id"), declaration.contributor(),
                () -> declaration.make(ItemBuilder.class));
    }

    private static CatalogueEntry catalogue(Declaration declaration) {
        String path = declaration.need("resource");
        return new CatalogueEntry(declaration.contributor() + "/" + path, declaration.contributor(),
                () -> declaration.source().open(path));
    }
}
