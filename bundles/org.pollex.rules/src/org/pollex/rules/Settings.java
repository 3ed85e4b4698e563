/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.List;
import org.pollex.model.catalogue.Entry;
import org.pollex.model.store.Catalogues;
import org.pollex.print.Printed;

/**
 * Thresholds of checks for one design. The nearest wins: the product's own, then its family's, the method's, the
 * material's, and last those that a catalogue gives for everything.
 */
final class Settings {

    private final Entry[] entries;
    private final Catalogues catalogues;

    Settings(Printed printed, Catalogues catalogues) {
        Entry product = printed.item().product();
        this.entries = catalogues.family(printed.item().product().getFamily())
                .map(family -> new Entry[] {product, family, printed.method(), printed.material()})
                .orElseGet(() -> new Entry[] {product, printed.method(), printed.material()});
        this.catalogues = catalogues;
    }

    double need(String key) {
        return catalogues.setting(key, entries).orElseThrow(() -> new MissingSettingException(key, names()));
    }

    private List<String> names() {
        return catalogues.layers().stream()
                .map(layer -> layer.getName() == null ? "one without a name" : "\"" + layer.getName() + "\"").toList();
    }
}
