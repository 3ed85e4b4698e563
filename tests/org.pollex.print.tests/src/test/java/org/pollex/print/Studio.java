/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.ArtRegion;
import org.pollex.artwork.FillRule;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.geometry.outline.Outline;
import org.pollex.geometry.outline.Outlines;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.model.catalogue.Product;
import org.pollex.model.design.Assignment;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Side;
import org.pollex.print.item.Item;
import org.pollex.print.item.ItemFace;

/** A design in the making, with everything it is printed with. */
final class Studio {

    final Design design = DesignFactory.eINSTANCE.createDesign();
    final Material material = CatalogueFactory.eINSTANCE.createMaterial();
    final Method method = CatalogueFactory.eINSTANCE.createMethod();
    final List<Ink> inks = new ArrayList<>();
    private final Map<String, Art> arts = new HashMap<>();
    private Lettering lettering = line -> {
        throw new AssertionError("No lettering is wanted here.");
    };

    Studio(int stock, Object... inkIdsAndColours) {
        material.setId("stock");
        material.setLab(lab(stock));
        method.setId("press");
        for (int i = 0; i < inkIdsAndColours.length; i += 2) {
            Ink ink = CatalogueFactory.eINSTANCE.createInk();
            ink.setId((String) inkIdsAndColours[i]);
            ink.setLab(lab((int) inkIdsAndColours[i + 1]));
            inks.add(ink);
        }
    }

    static LabColour lab(int rgb) {
        Lab lab = Srgb.lab(rgb);
        return new LabColour(lab.l(), lab.a(), lab.b());
    }

    void letterBy(Lettering setter) {
        lettering = setter;
    }

    <M extends Mark> M add(String side, M mark) {
        Side on = design.getSides().stream().filter(s -> s.getName().equals(side)).findFirst().orElseGet(() -> {
            Side made = DesignFactory.eINSTANCE.createSide();
            made.setName(side);
            made.getLayers().add(DesignFactory.eINSTANCE.createLayer());
            design.getSides().add(made);
            return made;
        });
        Layer layer = on.getLayers().get(0);
        mark.setId("m" + (layer.getMarks().size() + 1));
        layer.getMarks().add(mark);
        return mark;
    }

    /** Places art with its middle in the middle of the front. */
    Placement place(Art art) {
        Placement placement = DesignFactory.eINSTANCE.createPlacement();
        placement.setArt(art.name());
        arts.put(art.name(), art);
        return add("front", placement);
    }

    static void assign(Placement placement, String colour, String ink) {
        Assignment assignment = DesignFactory.eINSTANCE.createAssignment();
        assignment.setColour(colour);
        assignment.setInk(ink);
        placement.getAssignments().add(assignment);
    }

    DesignPrinter printer() {
        return new DesignPrinter(item(), material, method, inks, placement -> arts.get(placement.getArt()), lettering);
    }

    Printed print() throws Exception {
        return printer().print(design);
    }

    PrintedSide front() throws Exception {
        return print().side("front").orElseThrow();
    }

    static Item item() {
        Product product = CatalogueFactory.eINSTANCE.createProduct();
        product.setId("disc");
        Outline outline = Outlines.circle(28);
        Polygon area = outline.flatten();
        List<ItemFace> faces = new ArrayList<>();
        for (String name : new String[] {"front", "back"}) {
            faces.add(new ItemFace(name, outline, area, area, Polygons.empty(), Polygons.empty(), 0, (x, y) -> 0));
        }
        return new Item(product, 28, 28, faces);
    }

    /** Art of 20 x 20 mm. */
    static Art art(String name, ArtRegion... regions) {
        return new Art(name, 20, 20, true, List.of(regions), List.of(), List.of());
    }

    static ArtRegion fill(int rgb, Shape shape) {
        return fill(new ArtPaint.Flat(rgb, 1), shape);
    }

    static ArtRegion fill(ArtPaint paint, Shape shape, Shape... clips) {
        List<ArtPath> cuts = new ArrayList<>();
        for (Shape clip : clips) {
            cuts.add(ArtPath.of(clip, FillRule.NON_ZERO));
        }
        return new ArtRegion("r", ArtPath.of(shape, FillRule.NON_ZERO), paint, cuts, false);
    }

    static Shape box(double x, double y, double w, double h) {
        return new Rectangle2D.Double(x, y, w, h);
    }

    static Path2D polygon(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        path.closePath();
        return path;
    }

    /** Area of every ink of a side, as {@code ink=area} with two decimals, in painting order. */
    static String inks(PrintedSide side) {
        StringBuilder all = new StringBuilder();
        for (String ink : side.inks()) {
            Geometry area = side.ink(ink);
            all.append(all.isEmpty() ? "" : " ").append(ink)
                    .append(String.format(java.util.Locale.ROOT, "=%.2f", area.getArea()));
        }
        return all.toString();
    }
}
