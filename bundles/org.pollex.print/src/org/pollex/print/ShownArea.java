/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * An area of the print in which the same films lie over one another.
 *
 * @param laid   the areas of ink that meet here, lowest first; one where nothing overprints
 * @param white  whether the white below lies under them
 * @param area   valid polygonal geometry in mm, not empty
 */
public record ShownArea(List<InkRegion> laid, boolean white, Geometry area) {

    public ShownArea {
        laid = List.copyOf(laid);
    }
}
