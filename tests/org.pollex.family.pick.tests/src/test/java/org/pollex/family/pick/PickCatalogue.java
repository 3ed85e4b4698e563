/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.family.pick;

import java.io.IOException;
import java.io.InputStream;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.Product;
import org.pollex.model.catalogue.Setting;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;
import org.pollex.print.item.Item;
import org.pollex.print.item.ItemException;

/** The catalogue of picks as the bundle ships it, read afresh for every caller so that tests may change it. */
final class PickCatalogue {

    private PickCatalogue() {
    }

    static Catalogue read() {
        try (InputStream in = PickBuilder.class.getResourceAsStream("/catalogue/pick.catalogue")) {
            return ModelFiles.CATALOGUES.read(in, "pick.catalogue");
        } catch (IOException | StoreException e) {
            throw new AssertionError(e);
        }
    }

    static Product product(String id) {
        return read().getProducts().stream().filter(product -> product.getId().equals(id)).findFirst().orElseThrow();
    }

    static Item item(String id) throws ItemException {
        return new PickBuilder().build(product(id));
    }

    static void dimension(Product product, String key, double value) {
        setting(product.getDimensions(), key).setValue(value);
    }

    static Setting setting(Iterable<Setting> settings, String key) {
        for (Setting setting : settings) {
            if (setting.getKey().equals(key)) {
                return setting;
            }
        }
        throw new AssertionError("no " + key);
    }
}
