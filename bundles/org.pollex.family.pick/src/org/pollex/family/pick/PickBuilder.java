/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.family.pick;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.outline.Outline;
import org.pollex.geometry.outline.OutlineException;
import org.pollex.geometry.outline.RoundedTriangle;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.catalogue.Face;
import org.pollex.model.catalogue.Product;
import org.pollex.model.catalogue.Zone;
import org.pollex.model.catalogue.ZoneKind;
import org.pollex.print.item.Item;
import org.pollex.print.item.ItemBuilder;
import org.pollex.print.item.ItemException;
import org.pollex.print.item.ItemFace;

/**
 * Builds picks. A product of this family has the dimensions {@code width height topLeftRadius topRightRadius tipRadius
 * bulgeTop bulgeLeft bulgeRight} in mm, and for each face an unprintable zone (its inset), a wear-risk zone (its level)
 * and the wear parameters {@code reach falloff rim rimReach handling} of the wear field.
 *
 * <p>The three zones part the outline: the rim up to the inset does not print; of the rest, wear-risk is where the wear
 * field reaches the level; what remains in one piece is safe. Should the level leave several pieces, the largest is
 * safe and the others count as wear-risk. A mirrored face is the outline seen from behind.
 */
public final class PickBuilder implements ItemBuilder {

    /** Grid over which the level line of wear is followed, mm; its chords then stay within 1 um of it. */
    private static final double GRID = 0.1;

    private static final double LONGEST = 1000;

    @Override
    public Item build(Product product) throws ItemException {
        if (product.getFaces().isEmpty()) {
            throw new ItemException("Product " + product.getId()
                    + " has no printed face; add one to it in the catalogue.");
        }
        Numbers numbers = new Numbers(product.getId(), "dimension", product.getDimensions());
        List<ItemFace> faces = new ArrayList<>();
        for (Face face : product.getFaces()) {
            faces.add(face(product, face, outline(product, numbers, face.isMirrored())));
        }
        return new Item(product, numbers.need("width", 0, LONGEST), numbers.need("height", 0, LONGEST), faces);
    }

    private static Outline outline(Product product, Numbers n, boolean mirrored) throws ItemException {
        String left = mirrored ? "Right" : "Left";
        String right = mirrored ? "Left" : "Right";
        RoundedTriangle.Dimensions dimensions = new RoundedTriangle.Dimensions(n.need("width", 0, LONGEST),
                n.need("height", 0, LONGEST), n.need("top" + left + "Radius", 0, LONGEST),
                n.need("top" + right + "Radius", 0, LONGEST), n.need("tipRadius", 0, LONGEST),
                n.need("bulgeTop", 0, LONGEST), n.need("bulge" + left, 0, LONGEST),
                n.need("bulge" + right, 0, LONGEST));
        try {
            return RoundedTriangle.outline(dimensions);
        } catch (OutlineException e) {
            throw new ItemException("Product " + product.getId() + " cannot be made: " + e.getMessage()
                    + " Correct its dimensions in the catalogue.", e);
        }
    }

    private static ItemFace face(Product product, Face face, Outline outline) throws ItemException {
        double edge = zone(product, face, ZoneKind.UNPRINTABLE).getInset();
        double level = zone(product, face, ZoneKind.WEAR_RISK).getLevel();
        if (!(level > 0 && level <= 1)) {
            throw new ItemException("Product " + product.getId() + ": the wear level of face " + face.getName()
                    + " is " + level + ", but must lie above 0 and up to 1; correct it in the catalogue.");
        }
        PickWear wear = wear(product, face, outline);
        Polygon area = outline.flatten();
        Geometry printable = printable(product, face, outline, edge);
        Geometry worn = LevelSet.of(wear, level, printable.getEnvelopeInternal(), GRID);
        List<Polygon> rest = Polygons.parts(Polygons.difference(printable, worn));
        Polygon safe = rest.stream().max(Comparator.comparingDouble(Polygon::getArea))
                .orElseThrow(() -> new ItemException("Product " + product.getId() + ": the whole of face "
                        + face.getName() + " counts as worn at level " + level
                        + "; raise the level or weaken the wear parameters in the catalogue."));
        return new ItemFace(face.getName(), outline, area, safe, Polygons.difference(printable, safe),
                Polygons.difference(area, printable), edge, wear);
    }

    private static Geometry printable(Product product, Face face, Outline outline, double edge) throws ItemException {
        if (!(edge >= 0 && edge < LONGEST)) {
            throw new ItemException("Product " + product.getId() + ": the unprintable rim of face " + face.getName()
                    + " is " + edge + " mm, but must be 0 or more; correct it in the catalogue.");
        }
        try {
            return edge == 0 ? outline.flatten() : outline.inset(edge).flatten();
        } catch (OutlineException e) {
            throw new ItemException("Product " + product.getId() + ": nothing printable is left inside a rim of "
                    + edge + " mm on face " + face.getName() + "; make the rim narrower in the catalogue.", e);
        }
    }

    private static Zone zone(Product product, Face face, ZoneKind kind) throws ItemException {
        return face.getZones().stream().filter(zone -> zone.getKind() == kind).findFirst()
                .orElseThrow(() -> new ItemException("Product " + product.getId() + ": face " + face.getName()
                        + " has no zone of kind " + kind.getLiteral() + "; add one to it in the catalogue."));
    }

    private static PickWear wear(Product product, Face face, Outline outline) throws ItemException {
        Numbers n = new Numbers(product.getId(), "wear parameter of face " + face.getName(), face.getWear());
        Envelope box = outline.bounds();
        Coordinate tip = new Coordinate(0, box.getMaxY());
        return new PickWear(outline, tip, n.need("reach", 0.01, LONGEST), n.need("falloff", 0.1, 20),
                n.need("rim", 0, 1), n.need("rimReach", 0.01, LONGEST), n.need("handling", 0, 1));
    }
}
