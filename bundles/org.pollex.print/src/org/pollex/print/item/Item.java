/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.item;

import java.util.List;
import java.util.Optional;
import org.pollex.model.catalogue.Product;

/**
 * A product with its geometry.
 *
 * @param product  the catalogue entry
 * @param width    width of the outline in mm
 * @param height   height of the outline in mm
 * @param faces    printed faces, front first
 */
public record Item(Product product, double width, double height, List<ItemFace> faces) {

    public Item {
        faces = List.copyOf(faces);
    }

    /** The face of that name. */
    public Optional<ItemFace> face(String name) {
        return faces.stream().filter(face -> face.name().equals(name)).findFirst();
    }

    /** Whether a face is seen from behind, as the product says. */
    public boolean mirrored(String face) {
        return product.getFaces().stream().anyMatch(each -> face.equals(each.getName()) && each.isMirrored());
    }
}
