/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.List;
import org.pollex.model.catalogue.Entry;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.model.store.Catalogues;
import org.pollex.print.Printed;
import org.pollex.print.item.Item;

/**
 * Thresholds of checks for one design. The nearest wins: the product's own, then its family's, the method's, the
 * material's, and last those that a catalogue gives for everything.
 */
final class Settings {

    private final Entry[] entries;
    private final Catalogues catalogues;

    Settings(Printed printed, Catalogues catalogues) {
        this.entries = entries(printed.item(), printed.material(), printed.method(), catalogues);
        this.catalogues = catalogues;
    }

    /** Whose own settings go before those for everything, nearest first. */
    static Entry[] entries(Item item, Material material, Method method, Catalogues catalogues) {
        Entry product = item.product();
        return catalogues.family(item.product().getFamily())
                .map(family -> new Entry[] {product, family, method, material})
                .orElseGet(() -> new Entry[] {product, method, material});
    }

    double need(String key) {
        return catalogues.setting(key, entries).orElseThrow(() -> new MissingSettingException(key, names()));
    }

    private List<String> names() {
        return catalogues.layers().stream()
                .map(layer -> layer.getName() == null ? "one without a name" : "\"" + layer.getName() + "\"").toList();
    }
}
