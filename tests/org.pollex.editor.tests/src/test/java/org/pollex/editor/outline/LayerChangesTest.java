/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.eclipse.gef.commands.Command;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Side;

/** What steps and drops in the tree of layers do to the order of marks and layers. */
class LayerChangesTest {

    private Design design;
    private String before;

    /** Layers and marks, lowest first: front [low: a b c] [high: d e], back [rear: f]. */
    @BeforeEach
    void make() {
        design = DesignFactory.eINSTANCE.createDesign();
        side("front", layer("low", "a", "b", "c"), layer("high", "d", "e"));
        side("back", layer("rear", "f"));
        before = order();
    }

    private void side(String name, Layer... layers) {
        Side side = DesignFactory.eINSTANCE.createSide();
        side.setName(name);
        side.getLayers().addAll(List.of(layers));
        design.getSides().add(side);
    }

    private static Layer layer(String name, String... marks) {
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        layer.setName(name);
        for (String each : marks) {
            Mark mark = DesignFactory.eINSTANCE.createPlainShape();
            mark.setName(each);
            layer.getMarks().add(mark);
        }
        return layer;
    }

    private Layer layer(String name) {
        return design.getSides().stream().flatMap(each -> each.getLayers().stream())
                .filter(each -> name.equals(each.getName())).findFirst().orElseThrow();
    }

    private Mark mark(String name) {
        return design.getSides().stream().flatMap(each -> each.getLayers().stream())
                .flatMap(each -> each.getMarks().stream()).filter(each -> name.equals(each.getName())).findFirst()
                .orElseThrow();
    }

    private String order() {
        return design.getSides().stream().map(side -> side.getName() + side.getLayers().stream()
                .map(layer -> "[" + layer.getName() + ":" + layer.getMarks().stream().map(Mark::getName)
                        .collect(Collectors.joining()) + "]").collect(Collectors.joining()))
                .collect(Collectors.joining(" "));
    }

    /** Does a change, looks at the order, and takes it back. */
    private void gives(String wanted, Optional<Command> change) {
        change.orElseThrow().execute();
        assertEquals(wanted, order());
        change.get().undo();
        assertEquals(before, order(), "taken back");
    }

    @Test
    void marksStepWithinTheirLayerAndIntoTheNextOne() {
        gives("front[low:bac][high:de] back[rear:f]", LayerChanges.step(List.of(mark("a")), true));
        gives("front[low:ab][high:cde] back[rear:f]", LayerChanges.step(List.of(mark("c")), true));
        gives("front[low:abcd][high:e] back[rear:f]", LayerChanges.step(List.of(mark("d")), false));
        gives("front[low:bca][high:de] back[rear:f]", LayerChanges.step(List.of(mark("c"), mark("b")), false));
        assertTrue(LayerChanges.step(List.of(mark("e")), true).isEmpty(), "nothing is above");
        assertTrue(LayerChanges.step(List.of(mark("f")), false).isEmpty(), "another side is no next layer");
        layer("high").setLocked(true);
        assertTrue(LayerChanges.step(List.of(mark("c")), true).isEmpty(), "a locked layer takes no mark");
    }

    @Test
    void layersStepWithinTheirSide() {
        gives("front[high:de][low:abc] back[rear:f]", LayerChanges.step(List.of(layer("low")), true));
        gives("front[high:de][low:abc] back[rear:f]", LayerChanges.step(List.of(layer("high")), false));
        assertTrue(LayerChanges.step(List.of(layer("high")), true).isEmpty());
        assertTrue(LayerChanges.step(List.of(layer("low"), mark("d")), true).isEmpty(), "unlike things");
    }

    @Test
    void marksAreDroppedBetweenMarksIntoLayersAndFromSeveralLayersAtOnce() {
        gives("front[low:bca][high:de] back[rear:f]", LayerChanges.drop(design, List.of(mark("a")), mark("c"), false));
        gives("front[low:bac][high:de] back[rear:f]", LayerChanges.drop(design, List.of(mark("a")), mark("c"), true));
        gives("front[low:c][high:abde] back[rear:f]",
                LayerChanges.drop(design, List.of(mark("b"), mark("a")), mark("d"), true));
        gives("front[low:abc][high:e] back[rear:fd]", LayerChanges.drop(design, List.of(mark("d")), layer("rear"),
                false));
        gives("front[low:bcade][high:] back[rear:f]",
                LayerChanges.drop(design, List.of(mark("a"), mark("d"), mark("e")), layer("low"), false));
    }

    @Test
    void layersAreDroppedBesideLayersAndOntoSides() {
        gives("front[high:de][low:abc] back[rear:f]", LayerChanges.drop(design, List.of(layer("low")), layer("high"),
                false));
        gives("front[low:abc] back[high:de][rear:f]", LayerChanges.drop(design, List.of(layer("high")), layer("rear"),
                true));
        gives("front[low:abc] back[rear:f][high:de]", LayerChanges.drop(design, List.of(layer("high")),
                new Face("back"), false));
        gives("front[high:de] back[rear:f] rim[low:abc]", LayerChanges.drop(design, List.of(layer("low")),
                new Face("rim"), false));
        assertTrue(LayerChanges.drop(design, List.of(layer("low")), mark("d"), false).isEmpty(),
                "a layer does not go into a layer");
    }

    @Test
    void lockedThingsStayAndOnlyTheirLockChanges() {
        mark("a").setLocked(true);
        layer("high").setLocked(true);
        assertTrue(LayerChanges.delete(List.of(mark("a"), mark("d"), layer("high"), layer("low"))).isEmpty(),
                "locked themselves, in a locked layer, or holding something locked");
        assertTrue(LayerChanges.hide(List.of(mark("a"), layer("high"))).isEmpty());
        assertTrue(LayerChanges.into(List.of(mark("b")), layer("high"), 0).isEmpty());
        LayerChanges.lock(List.of(layer("high"))).orElseThrow().execute();
        gives("front[low:abc] back[rear:f]", LayerChanges.delete(List.of(layer("high"), mark("d"))));
    }

    @Test
    void anyDropKeepsEveryMarkAndIsTakenBack() {
        Random random = new Random(26);
        String[] names = {"a", "b", "c", "d", "e", "f"};
        for (int i = 0; i < 500; i++) {
            List<Mark> moved = java.util.stream.Stream.of(names).filter(each -> random.nextInt(3) == 0)
                    .map(this::mark).toList();
            Mark target = mark(names[random.nextInt(names.length)]);
            Optional<Command> change = LayerChanges.drop(design, moved, target, random.nextBoolean());
            assertTrue(change.isPresent() || ((Layer) target.eContainer()).getMarks().containsAll(moved),
                    "only what lies there already needs no change");
            change.ifPresent(each -> {
                each.execute();
                List<Mark> there = ((Layer) target.eContainer()).getMarks();
                assertTrue(there.containsAll(moved), order());
                assertEquals("abcdef", order().replaceAll("\\w+:|front|back|[^a-f]", "").chars().sorted()
                        .mapToObj(Character::toString).collect(Collectors.joining()));
                each.undo();
                assertEquals(before, order());
            });
        }
    }
}
