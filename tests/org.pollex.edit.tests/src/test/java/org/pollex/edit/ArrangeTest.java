/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.eclipse.gef.commands.Command;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.pollex.model.design.Design;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Side;

class ArrangeTest {

    private final Design design = Designs.sample();
    private final Layer art = design.getSides().get(0).getLayers().get(0);

    @Test
    void alignPutsLeftEdgesOnTheLine() {
        Mark mark = Designs.mark(design, "m2");
        Arrange.align(List.of(new Arrange.Boxed(mark, new Envelope(1, 3, 0, 2))), Arrange.Line.LEFT,
                new Envelope(-5, 5, -5, 5)).execute();
        assertEquals(2 - 6, mark.getX(), 1e-12);
        assertEquals(1, mark.getY(), 1e-12);
    }

    @Test
    void distributeMakesGapsEqual() {
        Mark a = Designs.mark(design, "m1");
        Mark b = Designs.mark(design, "m2");
        Mark c = Designs.mark(design, "m4");
        double startB = b.getX();
        Arrange.distribute(List.of(new Arrange.Boxed(a, new Envelope(0, 1, 0, 1)),
                new Arrange.Boxed(b, new Envelope(1.5, 3.5, 0, 1)),
                new Arrange.Boxed(c, new Envelope(9, 10, 0, 1))), true).execute();
        // widths 1 + 2 + 1 over 0..10 leave two gaps of 3: the middle box goes from 1.5 to 4
        assertEquals(startB + 2.5, b.getX(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> Arrange.distribute(List.of(), true));
    }

    @Test
    void groupKeepsThePaintingOrder() {
        Mark m1 = Designs.mark(design, "m1");
        Mark m3 = Designs.mark(design, "m3");
        Arrange.group(List.of(m3, m1), "Badge").execute();
        Layer group = (Layer) m1.eContainer();
        assertEquals("Badge", group.getName());
        assertEquals(List.of(m1, m3), group.getMarks());
    }

    @Test
    void toSidePutsMarksOnTopInTheirOrder() {
        Side back = design.getSides().get(1);
        Mark m1 = Designs.mark(design, "m1");
        Mark m2 = Designs.mark(design, "m2");
        Command command = Arrange.toSide(List.of(m1, m2), back);
        command.execute();
        Layer top = back.getLayers().get(0);
        assertEquals(List.of("m5", "m1", "m2"), top.getMarks().stream().map(Mark::getId).toList());
        command.undo();
        assertSame(art, m1.eContainer());
    }

    @Test
    void mirrorTwiceAndTurnBackGiveTheSamePose() {
        Pose pose = new Pose(1, 2, 0.5, 30, false);
        assertEquals(pose, pose.mirroredAbout(3).mirroredAbout(3));
        Pose turned = pose.turnedAbout(77, 4, -1).turnedAbout(-77, 4, -1);
        assertEquals(pose.x(), turned.x(), 1e-12);
        assertEquals(pose.y(), turned.y(), 1e-12);
        assertEquals(pose.turn(), turned.turn(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> pose.scaledAbout(0, 0, 0));
    }
}
