/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.side;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.graphics.RGB;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.pollex.colour.Srgb;
import org.pollex.editor.figure.ItemLook;
import org.pollex.editor.figure.Surface;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.print.PrintedTones;
import org.pollex.print.SeenThrough;
import org.pollex.print.item.ItemException;
import org.pollex.print.item.ItemFace;
import org.pollex.print.stock.Stock;

/** How does a face of the item of a design look, before anything is on it? */
public final class FaceLook {

    private static final RGB NO_MATERIAL = new RGB(225, 225, 225);
    private static final Envelope NO_ITEM = new Envelope(-12, 12, -14, 14);

    private FaceLook() {
    }

    /**
     * Area, zones and material; a plain box while the product is not known. The rim is that of the method where it is
     * wider than the product's.
     *
     * @param before  how the face looked, whose zones are taken over when they are the same
     */
    static ItemLook of(DesignSession session, String face, Optional<ItemLook> before) {
        try {
            ItemFace shown = session.suite().item(session.design().getProduct()).face(face).orElseThrow();
            double edge = Math.max(shown.edge(), session.suite().catalogues().method(session.design().getMethod())
                    .map(Method::getEdge).orElse(0.0));
            if (before.isPresent() && before.get().area() == shown.area() && before.get().edge() == edge) {
                ItemLook same = before.get();
                return new ItemLook(same.area(), same.safe(), same.wearRisk(), same.unprintable(), edge,
                        material(session), surface(session, face));
            }
            if (edge <= shown.edge()) {
                return new ItemLook(shown.area(), shown.safe(), shown.wearRisk(), shown.unprintable(), edge,
                        material(session), surface(session, face));
            }
            Geometry rim = shown.rim(edge);
            return new ItemLook(shown.area(), Polygons.difference(shown.safe(), rim),
                    Polygons.difference(shown.wearRisk(), rim), rim, edge, material(session),
                    surface(session, face));
        } catch (ItemException | java.util.NoSuchElementException e) {
            GeometryFactory factory = new GeometryFactory();
            return new ItemLook(factory.toGeometry(NO_ITEM), factory.createPolygon(), factory.createPolygon(),
                    factory.createPolygon(), 0, NO_MATERIAL, Optional.empty());
        }
    }

    private static Optional<Surface> surface(DesignSession session, String face) throws ItemException {
        boolean mirrored = session.suite().item(session.design().getProduct()).mirrored(face);
        return session.suite().catalogues().material(session.design().getMaterial()).filter(Stock::patterned)
                .map(each -> new Surface(each, mirrored, through(session, face, each)));
    }

    /** What the last print shows through that material; nothing before the first, or when it was on another one. */
    private static List<SeenThrough> through(DesignSession session, String face, Material material) {
        return session.known().map(Known::printed).filter(each -> each.material() == material)
                .map(each -> each.seen().through(face)).orElse(List.of());
    }

    /** Colour of the material; a light grey while it is not known. */
    public static RGB material(DesignSession session) {
        return session.suite().catalogues().material(session.design().getMaterial()).map(each -> {
            int rgb = Srgb.of(PrintedTones.ground(each));
            return new RGB(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255);
        }).orElse(NO_MATERIAL);
    }
}
