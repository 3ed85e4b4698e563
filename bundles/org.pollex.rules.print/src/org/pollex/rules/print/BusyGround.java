/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.TextureKind;
import org.pollex.model.store.EntryNames;
import org.pollex.print.ColourMatch;
import org.pollex.print.InkRegion;
import org.pollex.print.PrintedTones;
import org.pollex.print.stock.Legibility;
import org.pollex.print.stock.Stock;
import org.pollex.print.stock.Strokes;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/**
 * Does the pattern of the material drown the art? Signal to noise of each ink on the surface below it, at the width of
 * its own strokes ({@link Strokes}, {@link Legibility}); on a plain material there is nothing to check, and a swatch
 * picture that cannot be read, or has another colour than its material, is told. The message says what would help: inks
 * of the catalogue that read there, or the width from which this ink does.
 */
public final class BusyGround implements Check {

    private static final double WIDER = 1.25;
    private static final int INKS_NAMED = 2;

    private record Subject(String region, String name, Geometry area, UnaryOperator<Lab> film) {
    }

    @Override
    public void check(CheckContext context, FindingSink sink) {
        if (!Stock.patterned(context.printed().material())) {
            return;
        }
        Stock stock = Stock.of(context.printed().material());
        stock.problem().ifPresentOrElse(why -> sink.found(Severity.WARNING, "picture").say(why),
                () -> mean(context, stock, sink));
        for (SideMeasures side : context.sides()) {
            for (Subject subject : subjects(context, side)) {
                check(context, side, stock, subject, sink);
            }
        }
    }

    /** Contrast is judged by the colour of the material, so that of a photograph must be about its mean. */
    private static void mean(CheckContext context, Stock stock, FindingSink sink) {
        Material material = context.printed().material();
        if (material.getTexture().getKind() != TextureKind.SWATCH) {
            return;
        }
        double most = context.setting("busy-ground.mean");
        Lab mean = stock.mean();
        double far = DeltaE.ciede2000(mean, PrintedTones.ground(material));
        if (far > most) {
            String lab = Measures.number(mean.l(), 1) + " " + Measures.number(mean.a(), 1) + " "
                    + Measures.number(mean.b(), 1);
            sink.found(Severity.WARNING, "mean").measured(far, most, "CIEDE2000").say("The picture of "
                    + EntryNames.of(material) + " has the mean colour " + lab + " (L* a* b*), CIEDE2000 "
                    + Measures.number(far, 1) + " from the colour in the catalogue, by which contrast is judged; give "
                    + "the material lab=\"" + lab + "\" or balance the picture by a grey.");
        }
    }

    private static List<Subject> subjects(CheckContext context, SideMeasures side) {
        PrintedTones tones = context.tones();
        double smallest = context.setting("busy-ground.smallest");
        List<Subject> subjects = new ArrayList<>();
        for (String id : side.inks()) {
            List<InkRegion> regions = side.side().regions().stream().filter(each -> each.ink().equals(id)).toList();
            if (!id.equals(ColourMatch.PROCESS)) {
                subjects.add(new Subject(id, Subjects.ink(context.printed(), id), side.ink(id),
                        tones.laid(regions.get(0))::quick));
                continue;
            }
            for (InkRegion region : regions) {
                subjects.add(new Subject(id, "the colour " + Srgb.format(region.rgb()), region.area(),
                        tones.laid(region)::quick));
            }
        }
        return subjects.stream().filter(each -> each.area().getArea() >= smallest).toList();
    }

    private static void check(CheckContext context, SideMeasures side, Stock stock, Subject subject,
            FindingSink sink) {
        double error = context.setting("busy-ground.error");
        double warning = context.setting("busy-ground.warning");
        double note = context.setting("busy-ground.note");
        double widest = context.setting("busy-ground.widest");
        double width = Strokes.width(subject.area(), context.printed().method().getLineMin(), widest);
        DoubleFunction<Legibility> strokes = wide -> Legibility.of(stock, subject.area(),
                context.printed().item().mirrored(side.name()), wide);
        Legibility here = strokes.apply(width);
        double index = here.of(subject.film());
        if (index >= note) {
            return;
        }
        Severity severity = index < error ? Severity.ERROR : index < warning ? Severity.WARNING : Severity.INFO;
        double limit = severity == Severity.ERROR ? error : severity == Severity.WARNING ? warning : note;
        Geometry where = Polygons.intersection(here.below(subject.film(), limit), subject.area());
        String material = context.printed().material().getName();
        String lost = severity == Severity.INFO ? "can be read on" : severity == Severity.WARNING
                ? "is hard to read on" : "is lost in";
        double wanted = severity == Severity.INFO ? note : warning;
        OptionalDouble from = readsFrom(strokes, subject.film(), width, widest, wanted);
        sink.found(severity, "").on(side.name()).of(subject.region()).measured(index, limit, "signal to noise")
                .at(where.isEmpty() ? subject.area() : where)
                .say("At strokes " + Measures.mm(width) + " wide " + subject.name() + " " + lost + " the pattern of "
                        + (material == null ? "the material" : material) + " (signal to noise "
                        + Measures.number(index, 1) + ", " + Measures.number(note, 0) + " is safe); "
                        + cure(context, here, subject, from, wanted) + ".");
    }

    private static String cure(CheckContext context, Legibility here, Subject subject, OptionalDouble from,
            double wanted) {
        List<String> cures = new ArrayList<>();
        if (from.isPresent()) {
            cures.add("strokes of " + Measures.mm(Math.ceil(from.getAsDouble() * 20) / 20)
                    + " and more would read, so use bolder, simpler art");
        }
        List<String> inks = inks(context, here, subject.region(), wanted);
        if (!inks.isEmpty() && !subject.region().equals(ColourMatch.PROCESS)) {
            cures.add((cures.isEmpty() ? "" : "or ") + "print it in " + String.join(" or ", inks));
        }
        if (cures.isEmpty()) {
            return context.printed().method().isWhiteUnder()
                    ? "no width helps, so put it on a solid panel or choose a calmer material"
                    : "no ink or width helps, so put it on a solid panel, lay white below it, or choose a calmer "
                            + "material";
        }
        return String.join(", ", cures) + ", or give it a solid panel or an outline";
    }

    /** The narrowest stroke that reads; noise falls with it, so the first that passes is the answer. */
    private static OptionalDouble readsFrom(DoubleFunction<Legibility> strokes, UnaryOperator<Lab> film, double width,
            double widest, double wanted) {
        for (double wide = width * WIDER; wide <= widest * 1.001; wide *= WIDER) {
            if (strokes.apply(wide).of(film) >= wanted) {
                return OptionalDouble.of(wide);
            }
        }
        return OptionalDouble.empty();
    }

    /** Names of the inks that read best there. */
    private static List<String> inks(CheckContext context, Legibility here, String own,
            double limit) {
        record Rated(Ink ink, double index) {
        }
        return context.catalogues().inks().stream()
                .filter(ink -> ink.getKind() != InkKind.PROCESS && ink.getLab() != null && !own.equals(ink.getId()))
                .map(ink -> new Rated(ink, here.of(context.tones().laid(ink)::quick)))
                .filter(rated -> rated.index() >= limit)
                .sorted(Comparator.comparingDouble(Rated::index).reversed()).limit(INKS_NAMED)
                .map(rated -> EntryNames.of(rated.ink())).toList();
    }
}
