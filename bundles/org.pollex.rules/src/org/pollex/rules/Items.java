/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.pollex.model.catalogue.Product;
import org.pollex.model.store.Catalogues;
import org.pollex.print.item.Item;
import org.pollex.print.item.ItemBuilder;
import org.pollex.print.item.ItemException;

/** Builds items when they are first asked for and keeps them. A builder that fails costs its own items only. */
final class Items {

    private final Contributions contributions;
    private final Catalogues catalogues;
    private final Map<String, Item> built = new ConcurrentHashMap<>();

    Items(Contributions contributions, Catalogues catalogues) {
        this.contributions = contributions;
        this.catalogues = catalogues;
    }

    Item item(String id) throws ItemException {
        Item known = built.get(id);
        if (known != null) {
            return known;
        }
        Product product = catalogues.product(id).orElseThrow(() -> new ItemException("Product \"" + id
                + "\" is in no catalogue; choose one of " + String.join(", ", catalogues.products().stream()
                        .map(Product::getId).toList()) + ", or install the catalogue that has it."));
        Item item = build(product);
        Item first = built.putIfAbsent(id, item);
        return first == null ? item : first;
    }

    private Item build(Product product) throws ItemException {
        Optional<FamilyEntry> family = contributions.families().stream()
                .filter(entry -> entry.id().equals(product.getFamily())).findFirst();
        if (family.isEmpty()) {
            throw new ItemException("Product " + product.getId() + " belongs to the family \"" + product.getFamily()
                    + "\", which no bundle builds; install the bundle of that family.");
        }
        try {
            ItemBuilder builder = family.get().builder().get();
            Item item = builder == null ? null : builder.build(product);
            if (item == null || item.faces().isEmpty()) {
                throw new IllegalStateException("it built nothing");
            }
            return item;
        } catch (RuntimeException | LinkageError | StackOverflowError e) {
            throw new ItemException("Product " + product.getId() + " cannot be built by " + family.get().contributor()
                    + " (" + (e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage())
                    + "); update or remove that bundle.", e);
        }
    }
}
