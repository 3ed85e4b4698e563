/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.outline;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CompoundCommand;
import org.pollex.edit.AddSideCommand;
import org.pollex.edit.DeleteLayerCommand;
import org.pollex.edit.DeleteMarkCommand;
import org.pollex.edit.MoveLayerCommand;
import org.pollex.edit.MoveMarkToLayerCommand;
import org.pollex.edit.SetLayerStateCommand;
import org.pollex.edit.SetMarkStateCommand;
import org.pollex.editor.action.Changes;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Side;

/**
 * Which commands make up a change of lines of the tree? Each method gives one step of undo, or nothing when the change
 * makes no sense there or what it is about is locked.
 */
final class LayerChanges {

    private LayerChanges() {
    }

    /** Layers and marks that may be changed; a mark below a layer that is among them goes with it. */
    static List<Object> free(List<?> elements) {
        Set<Object> all = new LinkedHashSet<>(elements);
        List<Object> free = new ArrayList<>();
        for (Object each : all) {
            boolean below = each instanceof Mark mark && all.contains(mark.eContainer());
            if (!(each instanceof Face) && !below && !held(each)) {
                free.add(each);
            }
        }
        return free;
    }

    private static boolean held(Object element) {
        return element instanceof Mark mark ? mark.isLocked() || held(mark.eContainer())
                : element instanceof Layer layer && layer.isLocked();
    }

    /** Takes layers and marks away. A layer stays while a mark in it is locked. */
    static Optional<Command> delete(List<?> elements) {
        CompoundCommand all = new CompoundCommand("Delete");
        for (Object each : free(elements)) {
            if (each instanceof Mark mark) {
                all.add(new DeleteMarkCommand(mark));
            } else if (each instanceof Layer layer && layer.getMarks().stream().noneMatch(Mark::isLocked)) {
                all.add(new DeleteLayerCommand(layer));
            }
        }
        return some(all);
    }

    /** Hides what is free; shows it when all of it is hidden. */
    static Optional<Command> hide(List<?> elements) {
        boolean hide = free(elements).stream().anyMatch(each -> !LayerWords.hidden(each));
        CompoundCommand all = new CompoundCommand(hide ? "Hide" : "Show");
        free(elements).forEach(each -> all.add(state(each, hide, LayerWords.locked(each))));
        return some(all);
    }

    /** Locks layers and marks; frees them when all of them are locked. */
    static Optional<Command> lock(List<?> elements) {
        List<?> lockable = elements.stream().filter(each -> !(each instanceof Face)).toList();
        boolean lock = lockable.stream().anyMatch(each -> !LayerWords.locked(each));
        CompoundCommand all = new CompoundCommand(lock ? "Lock" : "Unlock");
        lockable.forEach(each -> all.add(state(each, LayerWords.hidden(each), lock)));
        return some(all);
    }

    private static Command state(Object element, boolean hidden, boolean locked) {
        return element instanceof Layer layer ? new SetLayerStateCommand(layer, hidden, locked)
                : new SetMarkStateCommand((Mark) element, hidden, locked);
    }

    /** Moves layers within their side, or marks within their layer and from it into the next one, by one place. */
    static Optional<Command> step(List<?> elements, boolean up) {
        List<Object> free = free(elements);
        if (!free.isEmpty() && free.stream().allMatch(Layer.class::isInstance)) {
            return stepLayers(free.stream().map(Layer.class::cast).toList(), up);
        }
        if (free.isEmpty() || !free.stream().allMatch(Mark.class::isInstance)) {
            return Optional.empty();
        }
        List<Mark> marks = free.stream().map(Mark.class::cast).toList();
        Optional<Command> inside = some((CompoundCommand) Changes.order(marks, up ? Changes.Order.FORWARD
                : Changes.Order.BACKWARD));
        return inside.isPresent() || marks.size() > 1 ? inside : next(marks.get(0), up);
    }

    private static Optional<Command> next(Mark mark, boolean up) {
        Layer layer = (Layer) mark.eContainer();
        List<Layer> layers = ((Side) layer.eContainer()).getLayers();
        int at = layers.indexOf(layer) + (up ? 1 : -1);
        if (at < 0 || at >= layers.size() || layers.get(at).isLocked()) {
            return Optional.empty();
        }
        return into(List.of(mark), layers.get(at), up ? 0 : layers.get(at).getMarks().size());
    }

    private static Optional<Command> stepLayers(List<Layer> moved, boolean up) {
        Side side = (Side) moved.get(0).eContainer();
        List<Layer> wanted = new ArrayList<>(side.getLayers());
        for (int k = 1; k < wanted.size(); k++) {
            int i = up ? wanted.size() - 1 - k : k;
            int other = up ? i + 1 : i - 1;
            if (moved.contains(wanted.get(i)) && !moved.contains(wanted.get(other))) {
                java.util.Collections.swap(wanted, i, other);
            }
        }
        CompoundCommand all = new CompoundCommand(up ? "Move up" : "Move down");
        order(all, side.getLayers(), wanted, (layer, index) -> new MoveLayerCommand(layer, side, index));
        return some(all);
    }

    /** The commands that bring a list into another order. */
    private static <T> void order(CompoundCommand all, List<T> list, List<T> wanted,
            BiFunction<T, Integer, Command> move) {
        List<T> now = new ArrayList<>(list);
        for (int i = 0; i < wanted.size(); i++) {
            T each = wanted.get(i);
            if (now.get(i) != each) {
                all.add(move.apply(each, i));
                now.remove(each);
                now.add(i, each);
            }
        }
    }

    /** Puts free marks into a layer, together, below the mark that is at that place now (0 lowest). */
    static Optional<Command> into(List<?> elements, Layer layer, int place) {
        List<Object> free = free(elements);
        if (layer.isLocked() || free.isEmpty() || !free.stream().allMatch(Mark.class::isInstance)) {
            return Optional.empty();
        }
        CompoundCommand all = new CompoundCommand("Move to layer");
        List<Mark> marks = free.stream().map(Mark.class::cast).toList();
        gather(all, layer.getMarks(), painted(marks), place,
                (mark, index) -> new MoveMarkToLayerCommand(mark, layer, index));
        return some(all);
    }

    /** Puts free layers onto a face, together, below the layer that is at that place now (0 lowest). */
    static Optional<Command> onto(Design design, List<?> elements, Face face, int place) {
        List<Object> free = free(elements);
        if (free.isEmpty() || !free.stream().allMatch(Layer.class::isInstance)) {
            return Optional.empty();
        }
        CompoundCommand all = new CompoundCommand("Move layer");
        Side side = face.side(design).orElseGet(() -> {
            Side made = DesignFactory.eINSTANCE.createSide();
            made.setName(face.name());
            all.add(new AddSideCommand(design, made));
            return made;
        });
        List<Layer> layers = free.stream().map(Layer.class::cast).sorted(java.util.Comparator.comparingInt(
                each -> ((Side) each.eContainer()).getLayers().indexOf(each))).toList();
        gather(all, side.getLayers(), layers, place, (layer, index) -> new MoveLayerCommand(layer, side, index));
        return some(all);
    }

    /**
     * Those that are in the list are brought together first; those from elsewhere go above them. Every place is one the
     * list has before the first command is done, since commands look at that when they are made.
     */
    private static <T> void gather(CompoundCommand all, List<T> list, List<T> moved, int place,
            BiFunction<T, Integer, Command> move) {
        List<T> own = list.stream().filter(moved::contains).toList();
        List<T> wanted = new ArrayList<>(list);
        wanted.removeAll(own);
        int at = place - (int) list.subList(0, place).stream().filter(own::contains).count();
        wanted.addAll(at, own);
        order(all, list, wanted, move);
        List<T> others = new ArrayList<>(moved);
        others.removeAll(own);
        for (int i = others.size() - 1; i >= 0; i--) {
            all.add(move.apply(others.get(i), at + own.size()));
        }
    }

    /**
     * What letting lines go does.
     *
     * @param target the line they are let go on or beside
     * @param below  whether they are let go at its lower edge
     */
    static Optional<Command> drop(Design design, List<?> lines, Object target, boolean below) {
        if (target instanceof Mark mark && mark.eContainer() instanceof Layer layer) {
            return into(lines, layer, layer.getMarks().indexOf(mark) + (below ? 0 : 1));
        }
        if (target instanceof Layer layer && layer.eContainer() instanceof Side side) {
            Optional<Command> marks = into(lines, layer, layer.getMarks().size());
            return marks.isPresent() ? marks : Face.of(layer).flatMap(face -> onto(design,
                    lines, face, side.getLayers().indexOf(layer) + (below ? 0 : 1)));
        }
        if (target instanceof Face face) {
            int top = face.side(design).map(side -> side.getLayers().size()).orElse(0);
            return onto(design, lines, face, top);
        }
        return Optional.empty();
    }

    private static List<Mark> painted(List<Mark> marks) {
        List<Mark> sorted = new ArrayList<>();
        marks.stream().map(each -> (Layer) each.eContainer()).distinct()
                .sorted(java.util.Comparator.comparingInt(layer -> ((Side) layer.eContainer()).getLayers()
                        .indexOf(layer)))
                .forEach(layer -> layer.getMarks().stream().filter(marks::contains).forEach(sorted::add));
        return sorted;
    }

    private static Optional<Command> some(CompoundCommand all) {
        return all.isEmpty() ? Optional.empty() : Optional.of(all);
    }
}
