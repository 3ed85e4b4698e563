/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.design;

import java.util.List;
import java.util.Optional;

/**
 * What a new design is to be.
 *
 * @param product   id
 * @param material  id
 * @param method    id
 * @param inks      ids in printing order; none leaves the choice to the suite
 * @param front     art of the front, or a folder of art
 * @param back      art of the back
 * @param largest   whether the art is placed as large as it goes, whatever its own size
 * @param force     whether a design that is there may be replaced
 */
public record Order(String product, String material, String method, List<String> inks, Optional<String> front,
        Optional<String> back, boolean largest, boolean force) {

    public Order {
        inks = List.copyOf(inks);
    }
}
