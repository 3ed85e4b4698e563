/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Srgb;
import org.pollex.geometry.shape.Polygons;
import org.pollex.making.session.Refusal;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;
import org.pollex.model.catalogue.Method;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.TextLine;
import org.pollex.print.ColourArea;
import org.pollex.print.ColourMatch;
import org.pollex.print.FilmColour;
import org.pollex.print.PrintedTones;
import org.pollex.print.retone.InkRepair;
import org.pollex.print.retone.MendedInks;
import org.pollex.print.retone.OneLightInk;
import org.pollex.print.retone.RetoneLimits;
import org.pollex.print.retone.RetoneStyle;

/**
 * The marks of a sibling that prints in several inks on a dark material. Every colour prints in what a plan chose of
 * the inks as they look there and the bare material; paper that the art encloses, which showed white, prints too. The
 * lightest ink adds the lines without which dark parts would melt into the material.
 */
final class SeveralInks {

    /** An ink that differs less from the ground, CIEDE2000, is not worth a plate. */
    private static final double SEEN = 10;
    /** A ground this dark, L*, needs light to be printed. */
    private static final double DARK = 50;
    /** White is added when no ink prints lighter than this much below it, L*. */
    private static final double AS_LIGHT = 8;

    private final MadeArt made;
    private final Ground ground;
    private final List<Ink> inks;
    private final InkPlan plan;
    private final Ink lightest;
    private final RetoneStyle style;
    private final Set<String> used = new HashSet<>();

    SeveralInks(MadeArt made, Ground ground, List<Ink> inks, InkPlan plan, RetoneStyle style) {
        this.made = made;
        this.ground = ground;
        this.inks = inks;
        this.plan = plan;
        this.style = style;
        this.lightest = inks.stream().max(Comparator.comparingDouble(ground::lighter)).orElseThrow();
    }

    /** Whether light has to be printed on a ground. */
    static boolean suits(Ground ground) {
        return ground.tone().l() < DARK;
    }

    /**
     * Of the inks of a design those that are seen on the ground, and one for what is white in the art; that one takes
     * the place of the least seen when the method prints no more.
     */
    static List<Ink> choose(List<Ink> own, List<Ink> all, Ground ground, Method method) {
        Comparator<Ink> leastSeen = Comparator.comparingDouble(ink -> seen(ink, ground));
        List<Ink> kept = new ArrayList<>(own.stream().filter(ink -> seen(ink, ground) >= SEEN).toList());
        all.stream().filter(ink -> ink.getKind() != InkKind.PROCESS && ink.getLab() != null)
                .max(Comparator.comparingDouble(ground::lighter)).ifPresent(white -> {
                    boolean light = kept.stream()
                            .anyMatch(ink -> ground.lighter(ink) >= ground.lighter(white) - AS_LIGHT);
                    if (!light) {
                        while (!kept.isEmpty() && kept.size() >= method.getInksMax()) {
                            kept.remove(kept.stream().min(leastSeen).orElseThrow());
                        }
                        kept.add(0, white);
                    }
                });
        return kept.isEmpty() ? own : kept;
    }

    private static double seen(Ink ink, Ground ground) {
        return DeltaE.ciede2000(PrintedTones.over(ink, ground.tone()), ground.tone());
    }

    /** Changes a mark of the sibling on a face with a safe zone; tells what was done. */
    String retone(Mark mark, Geometry safe, Map<Placement, Path> art) throws Refusal {
        if (!(mark instanceof Placement placement)) {
            return ink(mark);
        }
        int paper = MadeArt.paper(placement);
        List<ColourArea> areas = made.colours(placement);
        if (!MadeArt.several(areas, paper)) {
            // A mark of one colour has no other to stand out from: it prints in the lightest ink.
            used.add(lightest.getId());
            return new OneInk(made, ground, lightest, style).retone(mark, safe, art);
        }
        Geometry lines = lines(areas, paper);
        double smaller = Room.of(placement, areas, paper, lines, safe);
        if (smaller < 1) {
            Room.shrink(placement, areas, paper, smaller);
            areas = made.colours(placement);
            lines = lines(areas, paper);
        }
        Map<Integer, String> choices = new LinkedHashMap<>();
        List<ColourArea> printed = new ArrayList<>();
        List<ColourArea> drawn = Drawn.withPaper(areas, paper);
        double gap = Ground.limits(made.open().printed().method()).gap();
        lines = lines.isEmpty() ? lines : Drawn.withCrumbs(lines, drawn, gap);
        for (ColourArea area : drawn) {
            choices.put(area.rgb(), plan.of(area.rgb()));
            printed.add(new ColourArea(area.rgb(), Polygons.difference(area.area(), lines)));
        }
        if (!lines.isEmpty()) {
            int colour = free(choices.keySet());
            choices.put(colour, lightest.getId());
            printed.add(new ColourArea(colour, lines));
        }
        List<String> ids = inks.stream().map(Ink::getId).toList();
        MendedInks mended = InkRepair.of(printed, rgb -> ids.indexOf(choices.get(rgb)), made.inkLimits());
        Map<String, Geometry> fills = new LinkedHashMap<>();
        if (mended.mended() == 0) {
            // Lines painted over what they lie on leave no slits when corners are rounded to the digits of a file.
            drawn.forEach(area -> fills.put(Srgb.format(area.rgb()), area.area()));
        }
        mended.areas().forEach(area -> fills.putIfAbsent(Srgb.format(area.rgb()), area.area()));
        choices.keySet().removeIf(rgb -> !fills.containsKey(Srgb.format(rgb)));
        used.addAll(choices.values());
        String source = placement.getArt();
        made.write(placement, ground.material().getId(), "", ground.material().getId(), fills, art);
        choices.forEach((colour, ink) -> MadeArt.assign(placement, Srgb.format(colour), ink));
        return source + ": " + told(choices, lines) + MendedWords.of(mended) + Room.said(smaller);
    }

    /** The inks that the marks so far print in; others need no plate. */
    Set<String> used() {
        return used;
    }

    private String told(Map<Integer, String> choices, Geometry lines) {
        Set<String> used = new TreeSet<>(choices.values());
        boolean bare = used.remove(ColourMatch.BARE);
        String inks = String.join(", ", used);
        return (style.apart() ? "Its colours print in " + inks + (bare ? " or stay bare." : ".")
                : "Every colour prints in the nearest of the inks (" + inks + ")"
                + (bare ? "; what the material comes nearest to stays bare." : "."))
                + (lines.isEmpty() ? "" : " Lines in " + lightest.getId() + " keep dark parts from melting into it.");
    }

    private String ink(Mark mark) {
        String before = mark instanceof TextLine line ? line.getInk()
                : mark instanceof PlainShape shape ? shape.getInk() : ColourMatch.BARE;
        boolean stays = ColourMatch.BARE.equals(before) || inks.stream().anyMatch(ink -> ink.getId().equals(before));
        used.add(stays ? before : lightest.getId());
        if (!stays) {
            OneInk.print(mark, lightest);
        }
        return "line of text or plain shape: " + (stays ? "stays as it is." : "prints in " + lightest.getId() + ".");
    }

    private Geometry lines(List<ColourArea> areas, int paper) {
        Set<Integer> light = new HashSet<>();
        for (ColourArea area : areas) {
            if (area.rgb() != paper && light(plan.of(area.rgb()))) {
                light.add(area.rgb());
            }
        }
        RetoneLimits limits = Ground.limits(made.open().printed().method());
        return OneLightInk.lines(areas, paper, limits, style, light);
    }

    private boolean light(String id) {
        return inks.stream().anyMatch(ink -> ink.getId().equals(id) && ground.isLight(ink));
    }

    /** The colour of the lightest ink, or one beside it that the art does not use. */
    private int free(Set<Integer> taken) {
        int rgb = Srgb.of(FilmColour.lab(lightest.getLab()));
        while (taken.contains(rgb)) {
            rgb = (rgb & 0xff) > 0x80 ? rgb - 1 : rgb + 1;
        }
        return rgb;
    }
}
