/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.action;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CompoundCommand;
import org.locationtech.jts.geom.Envelope;
import org.pollex.edit.Arrange;
import org.pollex.edit.DeleteMarkCommand;
import org.pollex.edit.PlaceMarkCommand;
import org.pollex.edit.Pose;
import org.pollex.edit.SetOverprintCommand;
import org.pollex.editor.action.Changes.Order;
import org.pollex.editor.setting.Amount;
import org.pollex.editor.side.Shown;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;

/** Everything the editor's menus and keys do, by name. */
final class Acts {

    private static final double COPY_SHIFT = 1;

    private final Map<String, Act> acts = new LinkedHashMap<>();

    Acts() {
        bringIn();
        arrange();
        state();
        clipboard();
        nudges();
        guides();
    }

    /** An act by name. */
    Act get(String name) {
        Act act = acts.get(name);
        if (act == null) {
            throw new IllegalArgumentException("There is no act " + name + ".");
        }
        return act;
    }

    private void bringIn() {
        put("place-art", Workplace::open, Dialogs::placeArt);
        put("add-text", Workplace::open, Dialogs::addText);
        put("add-rectangle", Workplace::open, at -> Dialogs.addShape(at,
                org.pollex.model.design.ShapeKind.RECTANGLE));
        put("add-ellipse", Workplace::open, at -> Dialogs.addShape(at, org.pollex.model.design.ShapeKind.ELLIPSE));
        put("add-layer", Workplace::open, at -> at.session().run(Changes.addLayer(at.session().design(),
                at.pages().face(), Changes.newLayer(at.session().design(), at.pages().face()),
                java.util.Optional.empty())));
        put("replace-art", at -> at.free().size() == 1 && at.free().get(0) instanceof Placement,
                at -> Dialogs.replaceArt(at, (Placement) at.free().get(0)));
    }

    private void arrange() {
        each("mirror", "Mirror", (pose, middle) -> pose.mirroredAbout(middle.centre().x));
        each("turn-left", "Turn", (pose, middle) -> pose.turnedAbout(-90, middle.centre().x, middle.centre().y));
        each("turn-right", "Turn", (pose, middle) -> pose.turnedAbout(90, middle.centre().x, middle.centre().y));
        for (Arrange.Line line : Arrange.Line.values()) {
            change("align-" + line.name().toLowerCase(java.util.Locale.ROOT), 1,
                    at -> Arrange.align(at.boxed(at.free()), line, frame(at)));
        }
        change("distribute-across", 3, at -> Arrange.distribute(at.boxed(at.free()), true));
        change("distribute-down", 3, at -> Arrange.distribute(at.boxed(at.free()), false));
        change("to-front", 1, at -> Changes.order(at.free(), Order.FRONT));
        change("forward", 1, at -> Changes.order(at.free(), Order.FORWARD));
        change("backward", 1, at -> Changes.order(at.free(), Order.BACKWARD));
        change("to-back", 1, at -> Changes.order(at.free(), Order.BACK));
    }

    /** One mark is aligned to the item, several to each other. */
    private static Envelope frame(Workplace at) {
        return at.free().size() == 1
                ? at.face().map(each -> each.area().getEnvelopeInternal()).orElse(at.around(at.free()))
                : at.around(at.free());
    }

    private void state() {
        put("lock", at -> at.open() && !at.selected().isEmpty(), at -> {
            List<Mark> marks = at.selected();
            at.session().run(Changes.lock(marks));
            at.pages().select(marks);
        });
        change("hide", 1, at -> Changes.hide(at.free()));
        put("show-all", at -> at.open() && at.side().map(side -> Changes.showAll(side).canExecute()).orElse(false),
                at -> at.session().run(Changes.showAll(at.side().orElseThrow())));
        put("group", at -> !at.free().isEmpty(), Dialogs::group);
        put("other-side", at -> !at.free().isEmpty() && Dialogs.otherFace(at).isPresent(), at -> {
            List<Mark> marks = at.free();
            String face = Dialogs.otherFace(at).orElseThrow();
            at.session().run(Changes.toFace(at.session().design(), marks, face));
            at.pages().show(face);
            at.pages().select(marks);
        });
        change("overprint", 1, at -> {
            boolean on = at.free().stream().anyMatch(each -> !each.isOverprint());
            CompoundCommand all = new CompoundCommand("Overprint");
            at.free().forEach(mark -> all.add(new SetOverprintCommand(mark, on)));
            return all;
        });
        put("duplicate", at -> !at.free().isEmpty(), at -> {
            List<Mark> copies = at.free().stream().map(Arrange::copy).toList();
            copies.forEach(each -> {
                each.setX(each.getX() + COPY_SHIFT);
                each.setY(each.getY() + COPY_SHIFT);
            });
            at.session().run(Changes.add(at.session().design(), at.pages().face(), copies, "Duplicate"));
            at.pages().select(copies);
        });
        put("delete", at -> !at.free().isEmpty() || at.guide().isPresent(), Acts::delete);
        put("select-all", at -> at.side().isPresent(), at -> at.pages().select(at.side().orElseThrow().getLayers()
                .stream().filter(each -> !each.isHidden()).flatMap(each -> each.getMarks().stream())
                .filter(each -> !each.isHidden()).toList()));
    }

    private static void delete(Workplace at) {
        if (at.guide().isPresent()) {
            at.guides().delete(at.guide().get());
            return;
        }
        CompoundCommand all = new CompoundCommand("Delete");
        at.free().forEach(each -> all.add(new DeleteMarkCommand(each)));
        at.session().run(all);
    }

    private void guides() {
        put("add-guide", Workplace::open, Dialogs::addGuide);
        put("next-guide", at -> !at.guides().all().isEmpty(), at -> {
            Shown.GUIDES.set(true);
            at.pages().select(List.of());
            at.guides().chooseNext();
        });
        put("delete-guides", at -> at.open() && !at.guides().all().isEmpty(), at -> at.guides().deleteAll());
    }

    private void clipboard() {
        put("copy", at -> !at.selected().isEmpty(), Dialogs::copy);
        put("cut", at -> !at.free().isEmpty(), at -> {
            if (Dialogs.copy(at)) {
                delete(at);
            }
        });
        put("paste", Workplace::open, Dialogs::paste);
    }

    private void nudges() {
        for (boolean coarse : new boolean[] {false, true}) {
            Amount step = coarse ? Amount.FAR_STEP : Amount.STEP;
            String name = coarse ? "move-far-" : "move-";
            acts.put(name + "left", new Nudge(step, -1, 0));
            acts.put(name + "right", new Nudge(step, 1, 0));
            acts.put(name + "up", new Nudge(step, 0, -1));
            acts.put(name + "down", new Nudge(step, 0, 1));
        }
    }

    private interface Turned {
        Pose of(Pose pose, Envelope around);
    }

    private void each(String name, String label, Turned turned) {
        change(name, 1, at -> {
            Envelope around = at.around(at.free());
            CompoundCommand all = new CompoundCommand(label);
            at.free().forEach(mark -> all.add(new PlaceMarkCommand(label, mark, turned.of(Pose.of(mark), around))));
            return all;
        });
    }

    private void change(String name, int least, Function<Workplace, Command> command) {
        put(name, at -> at.free().size() >= least, at -> at.session().run(command.apply(at)));
    }

    private void put(String name, Predicate<Workplace> possible, Consumer<Workplace> run) {
        acts.put(name, new Act() {
            @Override
            public boolean possible(Workplace at) {
                return possible.test(at);
            }

            @Override
            public void run(Workplace at) {
                run.accept(at);
            }
        });
    }
}
