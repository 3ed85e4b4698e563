/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CommandStack;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.Placement;
import org.pollex.model.design.ShapeKind;
import org.pollex.model.design.Side;
import org.pollex.model.design.TextLine;

/** 10,000 random sequences: undo to the start and redo to the end leave the model byte-equal. */
class RandomSequenceTest {

    private static final int SEQUENCES = 10_000;

    @Test
    void undoAllAndRedoAllGiveTheSameBytes() {
        int executed = 0;
        for (int seed = 0; seed < SEQUENCES; seed++) {
            Random random = new Random(seed);
            Design design = Designs.sample();
            CommandStack stack = new CommandStack();
            stack.setUndoLimit(0);
            String start = Designs.bytes(design);
            int steps = 1 + random.nextInt(12);
            for (int i = 0; i < steps; i++) {
                Command command = any(design, random);
                if (command != null && command.canExecute()) {
                    stack.execute(command);
                    executed++;
                }
                if (random.nextInt(6) == 0 && stack.canUndo()) {
                    stack.undo();
                }
            }
            String end = Designs.bytes(design);
            int undone = 0;
            while (stack.canUndo()) {
                stack.undo();
                undone++;
            }
            assertEquals(start, Designs.bytes(design), "undo to the start, sequence " + seed);
            for (int i = 0; i < undone; i++) {
                stack.redo();
            }
            assertEquals(end, Designs.bytes(design), "redo to the end, sequence " + seed);
        }
        assertTrue(executed > SEQUENCES * 4, "the sequences really run commands: " + executed);
    }

    private static Command any(Design design, Random random) {
        Mark mark = Designs.anyMark(design, random);
        Layer layer = Designs.anyLayer(design, random);
        Side side = design.getSides().get(random.nextInt(design.getSides().size()));
        return switch (random.nextInt(16)) {
            case 0, 1, 2 -> mark == null ? null : new PlaceMarkCommand("Move", mark, Pose.of(mark)
                    .moved(random.nextGaussian(), random.nextGaussian()).turnedAbout(random.nextInt(360), 1, 2)
                    .scaledAbout(0.5 + random.nextDouble(), 0, 0).mirroredAbout(random.nextDouble()));
            case 3 -> layer == null ? null : new AddMarkCommand(layer,
                    Designs.shape("s" + random.nextInt(1000), random.nextDouble(), 0),
                    random.nextInt(layer.getMarks().size() + 1));
            case 4 -> mark == null ? null : new DeleteMarkCommand(mark);
            case 5 -> mark == null || layer == null ? null : new MoveMarkToLayerCommand(mark, layer,
                    random.nextInt(layer.getMarks().size() + (mark.eContainer() == layer ? 0 : 1)));
            case 6 -> new AddLayerCommand(side, DesignFactory.eINSTANCE.createLayer(),
                    random.nextInt(side.getLayers().size() + 1));
            case 7 -> layer == null ? null : new DeleteLayerCommand(layer);
            case 8 -> layer == null ? null : new MoveLayerCommand(layer, side,
                    random.nextInt(side.getLayers().size() + (layer.eContainer() == side ? 0 : 1)));
            case 9 -> new ChooseInksCommand(design, List.of("ink" + random.nextInt(3), "white"));
            case 10 -> mark instanceof Placement art ? new AssignInkCommand(art, "#00000" + random.nextInt(3),
                    random.nextInt(3) == 0 ? "" : "ink" + random.nextInt(3)) : null;
            case 11 -> mark == null ? null : Arrange.duplicate(List.of(mark), 1, 1);
            case 12 -> mark == null ? null : Arrange.toSide(all((Layer) mark.eContainer(), random), side);
            case 13 -> mark == null ? null : Arrange.group(all((Layer) mark.eContainer(), random), "Group");
            case 14 -> mark instanceof TextLine line ? new EditTextCommand(line,
                    new EditTextCommand.Style("w" + random.nextInt(9), "Sans", random.nextBoolean(), false,
                            1 + random.nextDouble(), 0, "black"))
                    : mark instanceof PlainShape shape ? new EditShapeCommand(shape, ShapeKind.RECTANGLE,
                            1 + random.nextDouble(), 2, 0, "bare") : null;
            default -> mark == null ? null : align((Layer) mark.eContainer(), random);
        };
    }

    private static List<Mark> all(Layer layer, Random random) {
        List<Mark> marks = new ArrayList<>(layer.getMarks());
        while (marks.size() > 1 && random.nextBoolean()) {
            marks.remove(random.nextInt(marks.size()));
        }
        return marks;
    }

    private static Command align(Layer layer, Random random) {
        List<Arrange.Boxed> boxed = layer.getMarks().stream().map(each -> new Arrange.Boxed(each,
                new Envelope(each.getX() - 1, each.getX() + 1, each.getY() - 1, each.getY() + 1))).toList();
        return boxed.size() >= 3 && random.nextBoolean() ? Arrange.distribute(boxed, random.nextBoolean())
                : Arrange.align(boxed, Arrange.Line.values()[random.nextInt(6)], new Envelope(-5, 5, -6, 6));
    }
}
