/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.action;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.gef.commands.Command;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.pollex.editor.action.Changes.Order;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Side;

class ChangesTest {

    private final Design design = DesignFactory.eINSTANCE.createDesign();
    private final Layer layer = DesignFactory.eINSTANCE.createLayer();

    @BeforeEach
    void fill() {
        Side side = DesignFactory.eINSTANCE.createSide();
        side.setName("front");
        side.getLayers().add(layer);
        design.getSides().add(side);
        for (String name : List.of("a", "b", "c", "d")) {
            layer.getMarks().add(mark(name));
        }
    }

    private static Mark mark(String name) {
        Mark mark = DesignFactory.eINSTANCE.createPlainShape();
        mark.setName(name);
        return mark;
    }

    private String names() {
        return String.join("", layer.getMarks().stream().map(Mark::getName).toList());
    }

    @ParameterizedTest
    @CsvSource({"a, FRONT, bcda", "ac, FRONT, bdac", "d, BACK, dabc", "bd, BACK, bdac", "b, FORWARD, acbd",
        "cd, FORWARD, abcd", "ab, FORWARD, cabd", "c, BACKWARD, acbd", "ab, BACKWARD, abcd", "cd, BACKWARD, acdb"})
    void order(String chosen, Order order, String expected) {
        List<Mark> marks = new ArrayList<>(layer.getMarks());
        marks.removeIf(each -> !chosen.contains(each.getName()));
        Command command = Changes.order(marks, order);
        if (command.canExecute()) {
            command.execute();
            assertEquals(expected, names());
            command.undo();
            assertEquals("abcd", names());
        } else {
            assertEquals(expected, "abcd", "nothing to do");
        }
    }

    @Test
    void addedOnTopInTheirOrderAndOnASideThatIsNotThereYet() {
        Changes.add(design, "front", List.of(mark("x"), mark("y")), "Paste").execute();
        assertEquals("abcdxy", names());
        Command back = Changes.add(design, "back", List.of(mark("z")), "Paste");
        back.execute();
        assertEquals("z", design.getSides().get(1).getLayers().get(0).getMarks().get(0).getName());
        back.undo();
        assertEquals(1, design.getSides().size());
    }

    @Test
    void toAFaceThatHasNoSideYet() {
        Command move = Changes.toFace(design, List.of(layer.getMarks().get(1)), "back");
        move.execute();
        assertEquals("acd", names());
        assertEquals("back", design.getSides().get(1).getName());
        move.undo();
        assertEquals("abcd", names());
        assertEquals(1, design.getSides().size());
    }

    @Test
    void aLockedLayerTakesNothing() {
        layer.setLocked(true);
        Changes.add(design, "front", List.of(mark("x")), "Paste").execute();
        assertEquals("abcd", names());
        assertEquals(2, design.getSides().get(0).getLayers().size());
    }

    @Test
    void lockThenUnlockHideThenShow() {
        Changes.lock(layer.getMarks()).execute();
        assertTrue(layer.getMarks().stream().allMatch(Mark::isLocked));
        Changes.lock(layer.getMarks()).execute();
        assertFalse(layer.getMarks().stream().anyMatch(Mark::isLocked));
        assertFalse(Changes.showAll(design.getSides().get(0)).canExecute());
        Changes.hide(layer.getMarks().subList(0, 2)).execute();
        assertTrue(layer.getMarks().get(0).isHidden());
        Changes.showAll(design.getSides().get(0)).execute();
        assertFalse(layer.getMarks().stream().anyMatch(Mark::isHidden));
    }

    @Test
    void theLargestBoxOfARectangleAndOfASpot() {
        Geometry area = new GeometryFactory().toGeometry(new Envelope(0, 20, 0, 10));
        assertEquals(5, Room.largest(area, 10, 5, 2, 2), 1e-5);
        assertTrue(Room.largest(area, 10, 5, 2, 2) < 5, "nothing is left for rounding");
        assertEquals(1, Room.largest(area, 1, 5, 2, 2), 1e-5);
        assertEquals(0, Room.largest(area, 30, 5, 2, 2));
        assertEquals(new Room.Spot(10, 5, Room.largest(area, 10, 5, 2, 2)), Room.spot(area, 0.1, 5, 2, 2),
                "too near the edge to be of use");
    }
}
