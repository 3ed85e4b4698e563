/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.family.pick;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.catalogue.Product;
import org.pollex.print.item.Item;
import org.pollex.print.item.ItemException;
import org.pollex.print.item.ItemFace;

/** Picks of the shipped catalogue, as geometry. */
class PickItemTest {

    @ParameterizedTest
    @CsvSource({"standard-pick, 26, 31", "small-pick, 22, 26", "wide-triangle-pick, 30, 30"})
    void fillsItsBoundingBoxRoundTheOrigin(String id, double width, double height) throws ItemException {
        Item item = PickCatalogue.item(id);
        assertEquals(width, item.width());
        assertEquals(height, item.height());
        assertEquals(List.of("front", "back"), item.faces().stream().map(ItemFace::name).toList());
        for (ItemFace face : item.faces()) {
            assertEquals(-width / 2, face.outline().bounds().getMinX(), 1e-9);
            assertEquals(width / 2, face.outline().bounds().getMaxX(), 1e-9);
            assertEquals(-height / 2, face.outline().bounds().getMinY(), 1e-9);
            assertEquals(height / 2, face.outline().bounds().getMaxY(), 1e-9);
            assertTrue(face.outline().isTangentContinuous());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"standard-pick", "small-pick", "wide-triangle-pick"})
    void zonesPartTheOutline(String id) throws ItemException {
        for (ItemFace face : PickCatalogue.item(id).faces()) {
            List<Geometry> zones = List.of(face.safe(), face.wearRisk(), face.unprintable());
            assertEquals(face.area().getArea(), zones.stream().mapToDouble(Geometry::getArea).sum(), 1e-6);
            for (int i = 0; i < zones.size(); i++) {
                Geometry one = zones.get(i);
                Geometry next = zones.get((i + 1) % zones.size());
                assertTrue(one.isValid() && one.getArea() > 10, () -> one.toString());
                assertEquals(0, Polygons.intersection(one, next).getArea(), 1e-6);
            }
            assertEquals(0, Polygons.symmetricDifference(face.area(), Polygons.union(zones)).getArea(), 1e-6);
            assertInstanceOf(Polygon.class, face.safe());
            assertEquals(0, ((Polygon) face.safe()).getNumInteriorRing());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"standard-pick", "small-pick", "wide-triangle-pick"})
    void rimIsAsWideAsTheEdge(String id) throws ItemException {
        ItemFace face = PickCatalogue.item(id).faces().get(0);
        assertEquals(1.0, face.edge());
        Geometry rim = face.area().getExteriorRing();
        for (Coordinate corner : Polygons.union(face.safe(), face.wearRisk()).getCoordinates()) {
            double depth = rim.distance(face.area().getFactory().createPoint(corner));
            assertTrue(depth > 1.0 - 0.003 && depth < 1.0 + 0.003, () -> corner + " lies " + depth + " deep");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"standard-pick", "small-pick", "wide-triangle-pick"})
    void wearIsAtItsLevelWhereTheZonesMeet(String id) throws ItemException {
        ItemFace face = PickCatalogue.item(id).faces().get(0);
        Geometry printable = Polygons.union(face.safe(), face.wearRisk());
        Geometry rim = ((Polygon) printable).getExteriorRing();
        int met = 0;
        Coordinate[] corners = face.safe().getCoordinates();
        for (int i = 1; i < corners.length; i++) {
            Coordinate middle = new Coordinate((corners[i - 1].x + corners[i].x) / 2,
                    (corners[i - 1].y + corners[i].y) / 2);
            if (rim.distance(printable.getFactory().createPoint(middle)) > 0.01) {
                assertEquals(0.4, face.wear().at(corners[i].x, corners[i].y), 2e-3);
                assertEquals(0.4, face.wear().at(middle.x, middle.y), 2e-3);
                met++;
            }
        }
        assertTrue(met > 20, "the level line has " + met + " chords");
        Coordinate inRisk = face.wearRisk().getInteriorPoint().getCoordinate();
        assertTrue(face.wear().at(inRisk.x, inRisk.y) > 0.4);
    }

    @Test
    void backIsTheFrontSeenFromBehind() throws ItemException {
        Product product = PickCatalogue.product("standard-pick");
        PickCatalogue.dimension(product, "topLeftRadius", 4);
        PickCatalogue.dimension(product, "bulgeRight", 1);
        Item item = new PickBuilder().build(product);
        Geometry front = item.faces().get(0).safe();
        Geometry back = item.faces().get(1).safe();
        Geometry turned = front.copy();
        turned.apply((org.locationtech.jts.geom.CoordinateFilter) c -> c.x = -c.x);
        turned.geometryChanged();
        assertTrue(Polygons.symmetricDifference(front, back).getArea() > 1);
        assertEquals(0, Polygons.symmetricDifference(turned, back).getArea(), 0.05);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "width | 0 | width must be above 0",
        "tipRadius | 20 | tip's radius of 20 mm is too large",
        "height | -3 | \"height\" is -3.0",
        "bulgeLeft | 14 | bulge of the left side"})
    void refusesImpossibleDimensions(String key, double value, String reason) {
        Product product = PickCatalogue.product("standard-pick");
        PickCatalogue.dimension(product, key, value);
        ItemException refused = assertThrows(ItemException.class, () -> new PickBuilder().build(product));
        assertTrue(refused.getMessage().contains("standard-pick"), refused.getMessage());
        assertTrue(refused.getMessage().contains(reason), refused.getMessage());
        assertTrue(refused.getMessage().contains("orrect"), refused.getMessage());
    }

    @Test
    void namesWhatIsMissing() {
        Product noDimension = PickCatalogue.product("standard-pick");
        noDimension.getDimensions().remove(0);
        refused(noDimension, "dimension \"width\" is missing");
        Product noFace = PickCatalogue.product("standard-pick");
        noFace.getFaces().clear();
        refused(noFace, "no printed face");
        Product noZone = PickCatalogue.product("standard-pick");
        noZone.getFaces().get(1).getZones().remove(1);
        refused(noZone, "face back has no zone of kind wear-risk");
        Product noWear = PickCatalogue.product("standard-pick");
        noWear.getFaces().get(0).getWear().remove(3);
        refused(noWear, "wear parameter of face front \"rimReach\" is missing");
        Product allWorn = PickCatalogue.product("standard-pick");
        allWorn.getFaces().get(0).getZones().get(1).setLevel(0.01);
        refused(allWorn, "the whole of face front counts as worn");
        Product allRim = PickCatalogue.product("standard-pick");
        allRim.getFaces().get(0).getZones().get(0).setInset(14);
        refused(allRim, "nothing printable is left inside a rim of 14.0 mm");
    }

    private static void refused(Product product, String reason) {
        ItemException refused = assertThrows(ItemException.class, () -> new PickBuilder().build(product));
        assertTrue(refused.getMessage().contains(reason), refused.getMessage());
    }
}
