/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.List;
import java.util.function.Supplier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.outline.Outline;
import org.pollex.geometry.outline.Outlines;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Family;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.model.catalogue.Product;
import org.pollex.model.catalogue.Setting;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.item.Item;
import org.pollex.print.item.ItemBuilder;
import org.pollex.print.item.ItemFace;

/** A family that lives in these tests: square tiles of 20 mm with a rim of 1 mm, worn in their lowest 3 mm. */
final class Tiles {

    private Tiles() {
    }

    static Setting setting(String key, double value) {
        Setting setting = CatalogueFactory.eINSTANCE.createSetting();
        setting.setKey(key);
        setting.setValue(value);
        return setting;
    }

    static Product product() {
        Product product = CatalogueFactory.eINSTANCE.createProduct();
        product.setId("tile-20");
        product.setName("20 mm tile");
        product.setFamily("tile");
        product.getDimensions().add(setting("width", 20));
        var face = CatalogueFactory.eINSTANCE.createFace();
        face.setName("front");
        product.getFaces().add(face);
        return product;
    }

    static Catalogue catalogue() {
        Catalogue catalogue = CatalogueFactory.eINSTANCE.createCatalogue();
        catalogue.setName("Tiles");
        Family family = CatalogueFactory.eINSTANCE.createFamily();
        family.setId("tile");
        family.setName("Tile");
        catalogue.getFamilies().add(family);
        catalogue.getProducts().add(product());
        Material clay = CatalogueFactory.eINSTANCE.createMaterial();
        clay.setId("clay");
        clay.setName("clay");
        catalogue.getMaterials().add(clay);
        Method stamp = CatalogueFactory.eINSTANCE.createMethod();
        stamp.setId("stamp");
        stamp.setName("stamp");
        catalogue.getMethods().add(stamp);
        return catalogue;
    }

    static CatalogueEntry entry(Supplier<Catalogue> catalogue) {
        return new CatalogueEntry("tiles.catalogue", "org.example.tiles", () -> {
            try {
                return new java.io.ByteArrayInputStream(ModelFiles.CATALOGUES.write(catalogue.get()));
            } catch (StoreException e) {
                throw new java.io.IOException(e);
            }
        });
    }

    static ItemBuilder builder() {
        return product -> {
            double width = product.getDimensions().get(0).getValue();
            Outline outline = Outlines.roundedRectangle(width, width, 0);
            Polygon area = outline.flatten();
            double inner = width / 2 - 1;
            Geometry printable = box(-inner, -inner, inner, inner);
            Geometry risk = box(-inner, inner - 3, inner, inner);
            return new Item(product, width, width, List.of(new ItemFace("front", outline, area,
                    Polygons.difference(printable, risk), risk, Polygons.difference(area, printable), 1,
                    (x, y) -> y > inner - 3 ? 1 : 0)));
        };
    }

    static Polygon box(double left, double top, double right, double bottom) {
        return Polygons.polygon(new Coordinate(left, top), new Coordinate(right, top), new Coordinate(right, bottom),
                new Coordinate(left, bottom));
    }

    /** A tile with these areas of black on its front. */
    static Printed printed(Geometry... black) throws Exception {
        Catalogue catalogue = catalogue();
        Item item = builder().build(catalogue.getProducts().get(0));
        List<InkRegion> regions = black.length == 0 ? List.of()
                : List.of(new InkRegion("black", 0, Polygons.union(List.of(black))));
        PrintedSide front = new PrintedSide(item.faces().get(0), regions, List.of(), List.of(), List.of(), List.of(),
                List.of());
        return new Printed(DesignFactory.eINSTANCE.createDesign(), item, catalogue.getMaterials().get(0),
                catalogue.getMethods().get(0), List.of(), List.of(front));
    }

    static CheckEntry check(String id, String contributor, Check check) {
        return entry(id, contributor, () -> check);
    }

    static CheckEntry entry(String id, String contributor, Supplier<Check> check) {
        return new CheckEntry(id, id + " by name", "why and what to do", contributor, check);
    }
}
