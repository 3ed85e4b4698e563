/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live;

import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.outline.OutlineException;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.item.ItemFace;

/** The part of a face that does not print: the rim of the product or of the method, whichever is wider. */
public final class Rim {

    private Rim() {
    }

    /**
     * The rim of a face.
     *
     * @param edge  width of the rim that the method leaves, mm
     */
    public static Geometry of(ItemFace face, double edge) {
        if (edge <= face.edge()) {
            return face.unprintable();
        }
        try {
            Geometry inner = face.outline().inset(edge).flatten();
            return Polygons.union(face.unprintable(), Polygons.difference(face.area(), inner));
        } catch (OutlineException e) {
            // wider than the item: nothing of it prints
            return face.area();
        }
    }
}
