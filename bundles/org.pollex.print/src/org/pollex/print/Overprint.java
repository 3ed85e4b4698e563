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
 * A place where inks lie over one another, because a mark was asked to print over what is below it.
 *
 * @param laid  the areas of ink that meet here, in the order in which they are laid, lowest first; two or more
 * @param area  where they meet; valid polygonal geometry in mm, not empty
 */
public record Overprint(List<InkRegion> laid, Geometry area) {

    public Overprint {
        laid = List.copyOf(laid);
    }
}
