/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.pollex.colour.Lab;
import org.pollex.colour.Xyz;
import org.pollex.colour.film.FilmModel;
import org.pollex.model.catalogue.Material;
import org.pollex.print.item.ItemFace;

/**
 * A place of a face where the print of the other face is seen through the stock.
 *
 * <p>A simple model without a source: the item lies on a white table. The share of the light that the material lets
 * through, its translucency, goes through the stock as through a clear film of the stock's colour, to the other print
 * or the table and back; the rest shows the stock as it is. Of the other print the film that was laid first is seen
 * first, so white below a print hides it. Blur by the thickness of the stock is left out. In three bands of light.
 *
 * @param area          where, mm on the face that is looked at; not cut at its outline
 * @param laid          the films there, on the other face
 * @param translucency  of the material, 0 opaque to 1 clear
 */
public record SeenThrough(Geometry area, Laid laid, double translucency) {

    private static final Lab TABLE = new Lab(100, 0, 0);

    /**
     * What a face shows of the other one, in the order in which it is to be painted: the later lies over the earlier.
     * Nothing on opaque stock and on items that have not exactly two faces.
     *
     * @param face  name of the face that is looked at
     */
    public static List<SeenThrough> on(Printed printed, PrintedTones tones, String face) {
        Material material = printed.material();
        List<ItemFace> faces = printed.item().faces();
        if (material.getTranslucency() <= 0 || faces.size() != 2) {
            return List.of();
        }
        boolean turned = printed.item().mirrored(faces.get(0).name()) != printed.item().mirrored(faces.get(1).name());
        AffineTransformation through = AffineTransformation.scaleInstance(turned ? -1 : 1, 1);
        return printed.sides().stream().filter(side -> !side.name().equals(face))
                .flatMap(side -> printed.underbase().shown(side).stream())
                .map(part -> new SeenThrough(through.transform(part.area()), tones.laid(part),
                        material.getTranslucency())).toList();
    }

    /**
     * What the bare stock shows there.
     *
     * @param stock  its colour on a white table
     */
    public Lab over(Lab stock) {
        Xyz seen = FilmModel.fast().over(laid.behind(TABLE), List.of(FilmModel.fast().glaze(stock, TABLE))).toXyz();
        Xyz own = stock.toXyz();
        return Lab.ofXyz(new Xyz(mixed(own.x(), seen.x()), mixed(own.y(), seen.y()), mixed(own.z(), seen.z())));
    }

    private double mixed(double own, double seen) {
        return own + translucency * (seen - own);
    }
}
