/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.property;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.locationtech.jts.geom.Envelope;
import org.pollex.artwork.font.ShippedFonts;
import org.pollex.colour.Srgb;
import org.pollex.edit.AssignInkCommand;
import org.pollex.edit.EditShapeCommand;
import org.pollex.edit.EditTextCommand;
import org.pollex.edit.PlaceMarkCommand;
import org.pollex.edit.Pose;
import org.pollex.edit.RenameMarkCommand;
import org.pollex.edit.SetGroundCommand;
import org.pollex.edit.SetOverprintCommand;
import org.pollex.editor.measure.Measure;
import org.pollex.editor.session.Known;
import org.pollex.editor.snap.Boxes;
import org.pollex.editor.work.Session;
import org.pollex.model.design.Assignment;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.Side;
import org.pollex.model.design.TextLine;
import org.pollex.model.design.UnknownMark;
import org.pollex.model.store.EntryNames;
import org.pollex.print.ColourMatch;
import org.pollex.print.PrintedSide;

/** The fields of one mark. */
final class MarkForm {

    private static final double LEAST = 1e-3;
    private static final String NONE = "none";

    private final Form form;
    private final Session session;
    private final Mark mark;

    private MarkForm(Form form, Session session, Mark mark) {
        this.form = form;
        this.session = session;
        this.mark = mark;
    }

    /** Adds the rows of a mark. */
    static void fill(Form form, Session session, Mark mark) {
        MarkForm rows = new MarkForm(form, session, mark);
        rows.place();
        if (mark instanceof TextLine line) {
            rows.text(line);
        } else if (mark instanceof PlainShape shape) {
            rows.shape(shape);
        } else if (mark instanceof Placement placement) {
            rows.art(placement);
        } else if (mark instanceof UnknownMark unknown) {
            form.heading("Unknown kind: " + unknown.getKind());
            return;
        }
        form.check("Prints over what lies below", mark::isOverprint,
                on -> session.run(new SetOverprintCommand(mark, on)));
    }

    private void place() {
        form.text("Name", () -> mark.getName() == null ? "" : mark.getName(),
                name -> session.run(new RenameMarkCommand(mark, name)));
        form.number("x, mm", Measure.Kind.LENGTH, mark::getX, x -> pose("Move", pose -> new Pose(x, pose.y(),
                pose.scale(), pose.turn(), pose.mirror())));
        form.number("y, mm", Measure.Kind.LENGTH, mark::getY, y -> pose("Move", pose -> new Pose(pose.x(), y,
                pose.scale(), pose.turn(), pose.mirror())));
        form.number("Width, mm", Measure.Kind.LENGTH, () -> box().getWidth(), width -> size(width, box().getWidth()));
        form.number("Height, mm", Measure.Kind.LENGTH, () -> box().getHeight(),
                height -> size(height, box().getHeight()));
        form.number("Scale, %", Measure.Kind.NUMBER, () -> mark.getScale() * 100, scale -> pose("Scale",
                pose -> new Pose(pose.x(), pose.y(), scale / 100, pose.turn(), pose.mirror())));
        form.number("Turn, degrees", Measure.Kind.TURN, mark::getTurn, turn -> pose("Turn",
                pose -> new Pose(pose.x(), pose.y(), pose.scale(), turn, pose.mirror())));
        form.check("Mirrored", mark::isMirror, on -> pose("Mirror", pose -> new Pose(pose.x(), pose.y(), pose.scale(),
                pose.turn(), on)));
    }

    private Envelope box() {
        Envelope box = Boxes.of(session.look(mark).hull(), Pose.of(mark));
        return box.isNull() ? new Envelope(0, 0, 0, 0) : box;
    }

    private void size(double wished, double now) {
        if (!(wished > LEAST)) {
            throw new IllegalArgumentException("The size must be above 0 mm.");
        }
        if (now > LEAST) {
            pose("Scale", pose -> new Pose(pose.x(), pose.y(), pose.scale() * wished / now, pose.turn(),
                    pose.mirror()));
        }
    }

    private void pose(String label, Function<Pose, Pose> change) {
        session.run(new PlaceMarkCommand(label, mark, change.apply(Pose.of(mark))));
    }

    private void text(TextLine line) {
        form.heading("Text");
        form.text("Words", () -> EditTextCommand.Style.of(line).text(), words -> style(line, now -> new
                EditTextCommand.Style(words, now.font(), now.bold(), now.italic(), now.size(), now.spacing(),
                        now.ink())));
        List<String> families = ShippedFonts.standard().families();
        form.choice("Font", families, () -> families.indexOf(line.getFont()), index -> style(line, now -> new
                EditTextCommand.Style(now.text(), families.get(index), now.bold(), now.italic(), now.size(),
                        now.spacing(), now.ink())));
        form.number("Size, mm", Measure.Kind.LENGTH, line::getSize, size -> style(line, now -> new
                EditTextCommand.Style(now.text(), now.font(), now.bold(), now.italic(), size, now.spacing(),
                        now.ink())));
        form.number("Spacing, mm", Measure.Kind.LENGTH, line::getSpacing, spacing -> style(line, now -> new
                EditTextCommand.Style(now.text(), now.font(), now.bold(), now.italic(), now.size(), spacing,
                        now.ink())));
        form.check("Bold", line::isBold, bold -> style(line, now -> new EditTextCommand.Style(now.text(), now.font(),
                bold, now.italic(), now.size(), now.spacing(), now.ink())));
        form.check("Italic", line::isItalic, italic -> style(line, now -> new EditTextCommand.Style(now.text(),
                now.font(), now.bold(), italic, now.size(), now.spacing(), now.ink())));
        ink("Ink", line::getInk, ink -> style(line, now -> new EditTextCommand.Style(now.text(), now.font(),
                now.bold(), now.italic(), now.size(), now.spacing(), ink)));
    }

    private void style(TextLine line, Function<EditTextCommand.Style, EditTextCommand.Style> change) {
        session.run(new EditTextCommand(line, change.apply(EditTextCommand.Style.of(line))));
    }

    private void shape(PlainShape shape) {
        form.heading("Shape");
        form.number("Shape width, mm", Measure.Kind.LENGTH, shape::getWidth, width -> shape(shape, width,
                shape.getHeight(), shape.getLineWidth(), shape.getInk()));
        form.number("Shape height, mm", Measure.Kind.LENGTH, shape::getHeight, height -> shape(shape,
                shape.getWidth(), height, shape.getLineWidth(), shape.getInk()));
        form.number("Line, mm (0 fills)", Measure.Kind.LENGTH, shape::getLineWidth, line -> shape(shape,
                shape.getWidth(), shape.getHeight(), line, shape.getInk()));
        ink("Ink", shape::getInk, ink -> shape(shape, shape.getWidth(), shape.getHeight(), shape.getLineWidth(), ink));
    }

    private void shape(PlainShape shape, double width, double height, double line, String ink) {
        session.run(new EditShapeCommand(shape, shape.getKind(), width, height, line, ink == null ? "" : ink));
    }

    private void ink(String name, Supplier<String> present, Consumer<String> take) {
        List<String> ids = inks();
        form.choice(name, ids.stream().map(this::inkName).toList(), () -> ids.indexOf(present.get()),
                index -> take.accept(ids.get(index)));
    }

    private List<String> inks() {
        List<String> ids = new ArrayList<>(session.design().getInks());
        ids.add(ColourMatch.BARE);
        return ids;
    }

    private String inkName(String id) {
        return id.equals(ColourMatch.BARE) ? "Bare material"
                : session.suite().catalogues().ink(id).map(EntryNames::title).orElse(id);
    }

    private void art(Placement placement) {
        form.heading(placement.getArt() == null ? "Art" : placement.getArt());
        Set<String> colours = colours(placement);
        List<String> grounds = new ArrayList<>(List.of(NONE));
        if (!colours.contains("#ffffff")) {
            grounds.add("#ffffff");
        }
        grounds.addAll(colours);
        form.choice("Ground of the art", grounds, () -> grounds.indexOf(placement.getGround()),
                index -> session.run(new SetGroundCommand(placement, grounds.get(index))));
        if (session.design().getInks().isEmpty()) {
            return;
        }
        List<String> ids = new ArrayList<>(List.of(""));
        ids.addAll(inks());
        List<String> names = new ArrayList<>(List.of("Chosen by the suite"));
        inks().forEach(each -> names.add(inkName(each)));
        for (String colour : colours) {
            form.choice("Colour " + colour, names, () -> Math.max(0, ids.indexOf(assigned(placement, colour))),
                    index -> session.run(new AssignInkCommand(placement, colour, ids.get(index))));
        }
    }

    private static String assigned(Placement placement, String colour) {
        return placement.getAssignments().stream().filter(each -> colour.equals(each.getColour()))
                .map(Assignment::getInk).findFirst().orElse("");
    }

    /** Colours of the art on that side, as far as they are known from the last print, and those assigned already. */
    private Set<String> colours(Placement placement) {
        Set<String> colours = new LinkedHashSet<>();
        Side side = (Side) placement.eContainer().eContainer();
        session.known().map(Known::printed).flatMap(each -> each.side(side.getName())).map(PrintedSide::matches)
                .orElse(List.of()).forEach(each -> colours.add(Srgb.format(each.rgb())));
        placement.getAssignments().forEach(each -> colours.add(each.getColour()));
        return colours;
    }
}
