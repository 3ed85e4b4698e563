/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.item;

import org.pollex.model.catalogue.Product;

/** Builds the geometry of the products of one family. Stateless; the same product gives the same item. */
public interface ItemBuilder {

    /**
     * Builds outline, zones and wear field from the dimensions of the product.
     *
     * @throws ItemException when the dimensions are missing or impossible, with the reason
     */
    Item build(Product product) throws ItemException;
}
