/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CompoundCommand;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.locationtech.jts.geom.Envelope;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Side;

/** Changes of several marks at once, each one step of undo. */
public final class Arrange {

    /** A mark with the box of what it prints, in mm on the item. */
    public record Boxed(Mark mark, Envelope box) {
    }

    /** Which edges or middles come to lie on one line. */
    public enum Line { LEFT, CENTRE, RIGHT, TOP, MIDDLE, BOTTOM }

    private Arrange() {
    }

    /** Puts edges or middles of all boxes on the line through those of {@code frame}. */
    public static Command align(List<Boxed> marks, Line line, Envelope frame) {
        CompoundCommand all = new CompoundCommand("Align");
        double target = at(frame, line);
        for (Boxed each : marks) {
            double shift = target - at(each.box(), line);
            add(all, "Align", each.mark(), horizontal(line) ? shift : 0, horizontal(line) ? 0 : shift);
        }
        return all;
    }

    /** Makes the gaps between neighbouring boxes equal; the outermost two stay. At least three marks. */
    public static Command distribute(List<Boxed> marks, boolean across) {
        if (marks.size() < 3) {
            throw new IllegalArgumentException("Distributing takes three marks or more.");
        }
        List<Boxed> sorted = new ArrayList<>(marks);
        sorted.sort(Comparator.comparingDouble(each -> low(each.box(), across)));
        double first = low(sorted.get(0).box(), across);
        double last = sorted.stream().mapToDouble(each -> low(each.box(), across) + size(each.box(), across))
                .max().orElseThrow();
        double taken = sorted.stream().mapToDouble(each -> size(each.box(), across)).sum();
        double gap = (last - first - taken) / (sorted.size() - 1);
        CompoundCommand all = new CompoundCommand("Distribute");
        double next = first;
        for (Boxed each : sorted) {
            double shift = next - low(each.box(), across);
            add(all, "Distribute", each.mark(), across ? shift : 0, across ? 0 : shift);
            next += size(each.box(), across) + gap;
        }
        return all;
    }

    /** Copies of the marks, shifted, each above its original. The copies get new ids when they are saved. */
    public static Command duplicate(List<? extends Mark> marks, double dx, double dy) {
        CompoundCommand all = new CompoundCommand("Duplicate");
        for (Mark mark : marks) {
            Layer layer = (Layer) mark.eContainer();
            Mark copy = copy(mark);
            copy.setX(mark.getX() + dx);
            copy.setY(mark.getY() + dy);
            all.add(new AddMarkCommand(layer, copy, layer.getMarks().indexOf(mark) + 1));
        }
        return all;
    }

    /** A copy without an id, for another place, side or design. */
    public static Mark copy(Mark mark) {
        Mark copy = EcoreUtil.copy(mark);
        copy.setId(null);
        return copy;
    }

    /** Moves marks to the top layer of another side that is shown; the side gets a layer when it has none. */
    public static Command toSide(List<? extends Mark> marks, Side side) {
        CompoundCommand all = new CompoundCommand("Move to other side");
        Layer shown = null;
        for (Layer each : side.getLayers()) {
            shown = each.isHidden() ? shown : each;
        }
        Layer layer = shown != null ? shown : DesignFactory.eINSTANCE.createLayer();
        if (shown == null) {
            all.add(new AddLayerCommand(side, layer, side.getLayers().size()));
        }
        int top = layer.getMarks().size();
        for (int i = marks.size() - 1; i >= 0; i--) {
            if (marks.get(i).eContainer() != layer) {
                all.add(new MoveMarkToLayerCommand(marks.get(i), layer, top));
            }
        }
        return all;
    }

    /** Gathers marks of one side into a new layer above the highest of their layers, in their painting order. */
    public static Command group(List<? extends Mark> marks, String name) {
        if (marks.isEmpty()) {
            throw new IllegalArgumentException("A group needs a mark.");
        }
        Layer highest = (Layer) marks.get(0).eContainer();
        Side side = (Side) highest.eContainer();
        List<Mark> ordered = new ArrayList<>();
        for (Layer layer : side.getLayers()) {
            for (Mark mark : layer.getMarks()) {
                if (marks.contains(mark)) {
                    ordered.add(mark);
                    highest = layer;
                }
            }
        }
        Layer group = DesignFactory.eINSTANCE.createLayer();
        group.setName(name);
        CompoundCommand all = new CompoundCommand("Group");
        all.add(new AddLayerCommand(side, group, side.getLayers().indexOf(highest) + 1));
        for (int i = ordered.size() - 1; i >= 0; i--) {
            all.add(new MoveMarkToLayerCommand(ordered.get(i), group, 0));
        }
        return all;
    }

    private static void add(CompoundCommand all, String label, Mark mark, double dx, double dy) {
        all.add(new PlaceMarkCommand(label, mark, Pose.of(mark).moved(dx, dy)));
    }

    private static boolean horizontal(Line line) {
        return line == Line.LEFT || line == Line.CENTRE || line == Line.RIGHT;
    }

    private static double at(Envelope box, Line line) {
        return switch (line) {
            case LEFT -> box.getMinX();
            case CENTRE -> (box.getMinX() + box.getMaxX()) / 2;
            case RIGHT -> box.getMaxX();
            case TOP -> box.getMinY();
            case MIDDLE -> (box.getMinY() + box.getMaxY()) / 2;
            case BOTTOM -> box.getMaxY();
        };
    }

    private static double low(Envelope box, boolean across) {
        return across ? box.getMinX() : box.getMinY();
    }

    private static double size(Envelope box, boolean across) {
        return across ? box.getWidth() : box.getHeight();
    }
}
