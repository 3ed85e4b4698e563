/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Near;
import org.pollex.making.session.Refusal;
import org.pollex.model.catalogue.Entry;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.model.store.Catalogues;
import org.pollex.print.item.Item;
import org.pollex.print.item.ItemException;
import org.pollex.rules.Suite;

/**
 * The catalogue entries that an order names.
 *
 * @param item      product with its geometry
 * @param material  what it is made of
 * @param method    how it is printed
 * @param inks      inks that were asked for; may be none
 */
record Stock(Item item, Material material, Method method, List<Ink> inks) {

    /**
     * Looks everything up.
     *
     * @throws Refusal with wrong use for an id that no catalogue has, naming the nearest ones
     */
    static Stock of(Suite suite, Order order) throws Refusal {
        Catalogues known = suite.catalogues();
        need(known.product(order.product()), "product", order.product(), known.products());
        Material material = need(known.material(order.material()), "material", order.material(), known.materials());
        Method method = need(known.method(order.method()), "method", order.method(), known.methods());
        List<Ink> inks = new ArrayList<>();
        for (String id : order.inks()) {
            Ink ink = need(known.ink(id), "ink", id, known.inks());
            if (inks.contains(ink)) {
                throw Refusal.wrongUse("The ink " + id + " is named twice; name it once.");
            }
            inks.add(ink);
        }
        try {
            return new Stock(suite.item(order.product()), material, method, inks);
        } catch (ItemException e) {
            throw new Refusal(ExitCode.UNREADABLE, e.getMessage(), e);
        }
    }

    private static <T extends Entry> T need(Optional<T> entry, String kind, String id, List<T> all) throws Refusal {
        if (entry.isEmpty()) {
            throw Refusal.wrongUse("There is no " + kind + " " + id + "; "
                    + Near.hint(id, all.stream().map(Entry::getId).toList(), kind + "s") + ".");
        }
        return entry.get();
    }
}
