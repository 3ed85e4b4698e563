/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.making.session.Refusal;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.design.Placement;
import org.pollex.print.ColourArea;
import org.pollex.print.ColourMatch;
import org.pollex.print.PrintedTones;
import org.pollex.print.retone.ColourShares;
import org.pollex.print.retone.KeptApart;

/**
 * Which of several inks each colour of the art of a design prints in, or bare stock: the nearest, or, where parts are
 * to be kept apart, what was chosen for all art of the design together, so that a colour is the same on every mark.
 */
final class InkPlan {

    /** So many colours are told one by one. */
    private static final int TOLD = 4;

    private final Ground ground;
    private final List<Ink> inks;
    private final Map<Integer, String> chosen = new TreeMap<>();
    private final List<ColourShares.Pair> merged = new ArrayList<>();
    private boolean apart;

    /** Every colour in what is nearest. */
    InkPlan(Ground ground, List<Ink> inks) {
        this.ground = ground;
        this.inks = inks;
    }

    /**
     * Chooses anew so that parts of some art stay apart.
     *
     * @param paperPrints  whether paper that the art encloses gets an ink too; else it stays bare
     */
    void keepApart(MadeArt made, List<Placement> art, boolean paperPrints) throws Refusal {
        apart = true;
        ColourShares shares = new ColourShares(Map.of(), Map.of());
        Map<Integer, Integer> fixed = new TreeMap<>();
        for (Placement placement : art) {
            int paper = MadeArt.paper(placement);
            List<ColourArea> areas = made.colours(placement);
            if (MadeArt.several(areas, paper)) {
                shares = shares.and(ColourShares.of(areas, paper));
                if (!paperPrints) {
                    fixed.put(paper, 0);
                }
            }
        }
        List<String> ids = new ArrayList<>(List.of(ColourMatch.BARE));
        List<Lab> printed = new ArrayList<>(List.of(ground.tone()));
        inks.forEach(ink -> {
            ids.add(ink.getId());
            printed.add(PrintedTones.over(ink, ground.tone()));
        });
        KeptApart choice = new KeptApart(shares, printed, fixed);
        int[] best = choice.best();
        for (int i = 0; i < best.length; i++) {
            chosen.put(choice.colours().get(i), ids.get(best[i]));
        }
        merged.addAll(choice.merged(best));
    }

    /** Id of the ink that a colour prints in, 0xRRGGBB, or bare. */
    String of(int rgb) {
        return chosen.containsKey(rgb) ? chosen.get(rgb) : nearest(rgb);
    }

    private String nearest(int rgb) {
        Lab wanted = Srgb.lab(rgb);
        String best = ColourMatch.BARE;
        double least = DeltaE.ciede2000(wanted, ground.tone());
        for (Ink ink : inks) {
            double difference = DeltaE.ciede2000(wanted, PrintedTones.over(ink, ground.tone()));
            if (difference < least) {
                least = difference;
                best = ink.getId();
            }
        }
        return best;
    }

    /** How colours were chosen, for people; nothing where every colour prints in what is nearest. */
    List<String> told() {
        if (!apart) {
            return List.of();
        }
        List<String> told = new ArrayList<>();
        List<String> moved = new ArrayList<>();
        chosen.forEach((rgb, id) -> {
            String near = nearest(rgb);
            if (!id.equals(near)) {
                moved.add(Srgb.format(rgb) + " " + prints(id) + ", though " + named(near) + " is nearer");
            }
        });
        told.add(moved.isEmpty() ? "Parts are kept apart: the nearest inks do so already." : "To keep parts apart "
                + list(moved) + ". Hues may differ from the art; look at them.");
        if (!merged.isEmpty()) {
            told.add("With these inks some parts still print alike: " + list(merged.stream()
                    .map(pair -> Srgb.format(pair.one()) + " beside " + Srgb.format(pair.other())).toList()) + ".");
        }
        return told;
    }

    private static String prints(String id) {
        return ColourMatch.BARE.equals(id) ? "stays bare" : "prints in " + id;
    }

    private static String named(String id) {
        return ColourMatch.BARE.equals(id) ? "bare stock" : id;
    }

    private static String list(List<String> all) {
        return String.join("; ", all.subList(0, Math.min(TOLD, all.size())))
                + (all.size() > TOLD ? "; and " + (all.size() - TOLD) + " more" : "");
    }
}
