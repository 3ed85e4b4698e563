/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.model.design.Placement;

/** Where the printer gets the art of a placement from: read from the file, or kept from an earlier reading. */
@FunctionalInterface
public interface ArtSupply {

    /**
     * The art of a placement.
     *
     * @throws ArtException when it is missing, changed since it was placed, or cannot be read
     */
    Art art(Placement placement) throws ArtException;
}
