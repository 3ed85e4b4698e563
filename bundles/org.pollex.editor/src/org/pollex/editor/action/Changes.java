/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.action;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CompoundCommand;
import org.pollex.edit.AddLayerCommand;
import org.pollex.edit.AddMarkCommand;
import org.pollex.edit.AddSideCommand;
import org.pollex.edit.Arrange;
import org.pollex.edit.MoveMarkToLayerCommand;
import org.pollex.edit.SetLayerStateCommand;
import org.pollex.edit.SetMarkStateCommand;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Side;

/** Which commands make up what a menu entry says? Each method gives one step of undo. */
public final class Changes {

    /** Where a mark goes in the order of its layer. */
    public enum Order { FRONT, FORWARD, BACKWARD, BACK }

    private Changes() {
    }

    /** Adds marks above all others in the top layer that is free; makes side and layer when there are none. */
    public static Command add(Design design, String face, List<? extends Mark> marks, String label) {
        CompoundCommand all = new CompoundCommand(label);
        Optional<Side> found = side(design, face);
        Side side = found.orElseGet(() -> {
            Side made = DesignFactory.eINSTANCE.createSide();
            made.setName(face);
            all.add(new AddSideCommand(design, made));
            return made;
        });
        List<Layer> free = side.getLayers().stream().filter(each -> !each.isLocked() && !each.isHidden()).toList();
        Layer layer;
        if (free.isEmpty()) {
            layer = DesignFactory.eINSTANCE.createLayer();
            all.add(new AddLayerCommand(side, layer, side.getLayers().size()));
        } else {
            layer = free.get(free.size() - 1);
        }
        // the commands check the place when they are made, before any of them is done: each goes where the first
        // goes, the last first
        int top = layer.getMarks().size();
        for (int i = marks.size() - 1; i >= 0; i--) {
            all.add(new AddMarkCommand(layer, marks.get(i), top));
        }
        return all;
    }

    /** A layer named by its number that no other layer of the face has. */
    public static Layer newLayer(Design design, String face) {
        List<String> names = side(design, face).map(side -> side.getLayers().stream().map(Layer::getName).toList())
                .orElse(List.of());
        int number = names.size() + 1;
        while (names.contains("Layer " + number)) {
            number++;
        }
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        layer.setName("Layer " + number);
        return layer;
    }

    /** Adds a layer to a face, above another one or on top; makes the side when there is none. */
    public static Command addLayer(Design design, String face, Layer layer, Optional<Layer> above) {
        CompoundCommand all = new CompoundCommand("New layer");
        Side side = side(design, face).orElseGet(() -> {
            Side made = DesignFactory.eINSTANCE.createSide();
            made.setName(face);
            all.add(new AddSideCommand(design, made));
            return made;
        });
        int place = above.map(each -> side.getLayers().indexOf(each) + 1).filter(each -> each > 0)
                .orElse(side.getLayers().size());
        all.add(new AddLayerCommand(side, layer, place));
        return all;
    }

    /** Moves marks of a face to another one, making the side when it is not there yet. */
    public static Command toFace(Design design, List<? extends Mark> marks, String face) {
        Optional<Side> side = side(design, face);
        if (side.isPresent()) {
            return Arrange.toSide(marks, side.get());
        }
        CompoundCommand all = new CompoundCommand("Move to other side");
        Side made = DesignFactory.eINSTANCE.createSide();
        made.setName(face);
        all.add(new AddSideCommand(design, made));
        all.add(Arrange.toSide(marks, made));
        return all;
    }

    private static Optional<Side> side(Design design, String face) {
        return design.getSides().stream().filter(each -> face.equals(each.getName())).findFirst();
    }

    /** Puts marks in front of or behind others of their layer; among themselves they keep their order. */
    public static Command order(List<? extends Mark> marks, Order order) {
        CompoundCommand all = new CompoundCommand(label(order));
        List<Layer> layers = marks.stream().map(each -> (Layer) each.eContainer()).distinct().toList();
        for (Layer layer : layers) {
            List<Mark> wanted = ordered(layer.getMarks(), marks, order);
            List<Mark> now = new ArrayList<>(layer.getMarks());
            for (int i = 0; i < wanted.size(); i++) {
                Mark mark = wanted.get(i);
                if (now.get(i) != mark) {
                    all.add(new MoveMarkToLayerCommand(mark, layer, i));
                    now.remove(mark);
                    now.add(i, mark);
                }
            }
        }
        return all;
    }

    private static String label(Order order) {
        return switch (order) {
            case FRONT -> "Bring to front";
            case FORWARD -> "Bring forward";
            case BACKWARD -> "Send backward";
            case BACK -> "Send to back";
        };
    }

    private static List<Mark> ordered(List<Mark> layer, List<? extends Mark> moved, Order order) {
        List<Mark> list = new ArrayList<>(layer);
        List<Mark> chosen = layer.stream().filter(moved::contains).toList();
        switch (order) {
            case FRONT -> {
                list.removeAll(chosen);
                list.addAll(chosen);
            }
            case BACK -> {
                list.removeAll(chosen);
                list.addAll(0, chosen);
            }
            case FORWARD -> {
                for (int i = list.size() - 2; i >= 0; i--) {
                    if (moved.contains(list.get(i)) && !moved.contains(list.get(i + 1))) {
                        Collections.swap(list, i, i + 1);
                    }
                }
            }
            case BACKWARD -> {
                for (int i = 1; i < list.size(); i++) {
                    if (moved.contains(list.get(i)) && !moved.contains(list.get(i - 1))) {
                        Collections.swap(list, i, i - 1);
                    }
                }
            }
        }
        return list;
    }

    /** Locks marks, or frees them when all are locked. */
    public static Command lock(List<? extends Mark> marks) {
        boolean lock = marks.stream().anyMatch(each -> !each.isLocked());
        CompoundCommand all = new CompoundCommand(lock ? "Lock" : "Unlock");
        marks.forEach(each -> all.add(new SetMarkStateCommand(each, each.isHidden(), lock)));
        return all;
    }

    /** Hides marks. */
    public static Command hide(List<? extends Mark> marks) {
        CompoundCommand all = new CompoundCommand("Hide");
        marks.forEach(each -> all.add(new SetMarkStateCommand(each, true, each.isLocked())));
        return all;
    }

    /** Shows every layer and mark of a side that is hidden; can not be done when none is. */
    public static Command showAll(Side side) {
        CompoundCommand all = new CompoundCommand("Show all");
        for (Layer layer : side.getLayers()) {
            if (layer.isHidden()) {
                all.add(new SetLayerStateCommand(layer, false, layer.isLocked()));
            }
            layer.getMarks().stream().filter(Mark::isHidden)
                    .forEach(each -> all.add(new SetMarkStateCommand(each, false, each.isLocked())));
        }
        return all;
    }
}
