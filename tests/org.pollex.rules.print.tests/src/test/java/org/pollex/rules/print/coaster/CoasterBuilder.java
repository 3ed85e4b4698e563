/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print.coaster;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.outline.Outline;
import org.pollex.geometry.outline.Outlines;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.catalogue.Product;
import org.pollex.print.item.Item;
import org.pollex.print.item.ItemBuilder;
import org.pollex.print.item.ItemFace;

/** Round coasters: a rim of 1 mm does not print, the 4 mm inside it wear. */
public final class CoasterBuilder implements ItemBuilder {

    @Override
    public Item build(Product product) {
        double diameter = product.getDimensions().get(0).getValue();
        Outline outline = Outlines.circle(diameter);
        Polygon area = outline.flatten();
        Geometry printable = outline.inset(1).flatten();
        Geometry safe = outline.inset(5).flatten();
        return new Item(product, diameter, diameter, List.of(new ItemFace("top", outline, area, safe,
                Polygons.difference(printable, safe), Polygons.difference(area, printable), 1,
                (x, y) -> Math.min(1, Math.hypot(x, y) / (diameter / 2)))));
    }
}
