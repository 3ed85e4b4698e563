/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.fixes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CompoundCommand;
import org.pollex.colour.Srgb;
import org.pollex.edit.AssignInkCommand;
import org.pollex.edit.ChooseInksCommand;
import org.pollex.edit.ChooseMaterialCommand;
import org.pollex.edit.EditShapeCommand;
import org.pollex.edit.EditTextCommand;
import org.pollex.model.design.Assignment;
import org.pollex.model.design.Design;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.TextLine;
import org.pollex.print.Printed;

/** The same design in other inks, or on another material. */
public final class Colourway {

    private Colourway() {
    }

    /**
     * Prints on another material in other inks, as one step of undo. What prints in an ink that is exchanged prints in
     * the one that takes its place, also where the suite chose the ink by the colour of the art.
     *
     * @param design    which is changed
     * @param printed   the print of it
     * @param material  id
     * @param inks      id of the other ink by id of each ink that is exchanged
     */
    public static Command of(Design design, Printed printed, String material, Map<String, String> inks) {
        CompoundCommand all = new CompoundCommand("Choose colourway");
        if (!material.equals(design.getMaterial())) {
            all.add(new ChooseMaterialCommand(design, material));
        }
        if (!inks.isEmpty()) {
            Map<Integer, String> chosen = new LinkedHashMap<>();
            printed.sides().stream().flatMap(side -> side.matches().stream())
                    .filter(match -> !match.assigned() && inks.containsKey(match.ink()))
                    .forEach(match -> chosen.putIfAbsent(match.rgb(), inks.get(match.ink())));
            chosen.forEach((rgb, ink) -> pin(design, Srgb.format(rgb), ink, all));
            inked(design, inks, UnaryOperator.identity()).forEach(all::add);
        }
        return all;
    }

    /** The suite would choose anew among other inks: what it chose is written down, in the ink that takes its place. */
    private static void pin(Design design, String colour, String ink, CompoundCommand all) {
        for (Mark mark : Remedies.all(design)) {
            if (mark instanceof Placement placement && placement.getAssignments().stream()
                    .noneMatch(each -> colour.equalsIgnoreCase(each.getColour()))) {
                all.add(new AssignInkCommand(placement, colour, ink));
            }
        }
    }

    /**
     * Commands that exchange inks: in the list of the design, and wherever one was chosen by hand.
     *
     * @param original  from an object of the design to the one that the commands change
     */
    static List<Command> inked(Design design, Map<String, String> inks, UnaryOperator<EObject> original) {
        List<String> list = design.getInks().stream().map(each -> inks.getOrDefault(each, each)).distinct().toList();
        List<Command> all = new ArrayList<>(List.of(new ChooseInksCommand((Design) original.apply(design), list)));
        for (Mark mark : Remedies.all(design)) {
            if (mark instanceof Placement placement) {
                for (Assignment each : placement.getAssignments()) {
                    if (inks.containsKey(each.getInk())) {
                        all.add(new AssignInkCommand((Placement) original.apply(placement), each.getColour(),
                                inks.get(each.getInk())));
                    }
                }
            } else if (mark instanceof TextLine line && inks.containsKey(line.getInk())) {
                EditTextCommand.Style style = EditTextCommand.Style.of(line);
                all.add(new EditTextCommand((TextLine) original.apply(line), new EditTextCommand.Style(style.text(),
                        style.font(), style.bold(), style.italic(), style.size(), style.spacing(),
                        inks.get(line.getInk()))));
            } else if (mark instanceof PlainShape shape && inks.containsKey(shape.getInk())) {
                all.add(new EditShapeCommand((PlainShape) original.apply(shape), shape.getKind(), shape.getWidth(),
                        shape.getHeight(), shape.getLineWidth(), inks.get(shape.getInk())));
            }
        }
        return all;
    }
}
