/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.family.pick;

import java.util.Locale;
import org.eclipse.emf.common.util.EList;
import org.pollex.model.catalogue.Setting;
import org.pollex.print.item.ItemException;

/**
 * Reads the named numbers of a product, and says in one sentence which is missing or out of range.
 *
 * @param product  id of the product, for messages
 * @param what     what the numbers belong to, for messages
 * @param entries  the numbers
 */
record Numbers(String product, String what, EList<Setting> entries) {

    /** A number that has to be there, from {@code least} to {@code most}. */
    double need(String key, double least, double most) throws ItemException {
        for (Setting entry : entries) {
            if (key.equals(entry.getKey())) {
                double value = entry.getValue();
                if (!(value >= least && value <= most)) {
                    throw new ItemException(String.format(Locale.ROOT, "Product %s: %s \"%s\" is %s, but must lie "
                            + "between %s and %s; correct it in the catalogue.", product, what, key, value, least,
                            most));
                }
                return value;
            }
        }
        throw new ItemException("Product " + product + ": " + what + " \"" + key
                + "\" is missing; add it to the product in the catalogue.");
    }
}
