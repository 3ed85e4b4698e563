/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;

/**
 * Which ink each colour of one piece of art prints in. What the designer assigned holds. The default: a full-colour
 * method prints every colour by process inks; several inks, the nearest by CIEDE2000 among the inks and bare stock;
 * one ink, a colour whose lightness is nearer to the art's ground than to its figure goes bare and the others print,
 * whatever the ink looks like. The figure is the colour that differs most from the ground in lightness, among those
 * with at least one part in a hundred of what is not ground; art without a ground prints all of it.
 */
final class InkChoice {

    private static final double SPECK = 0.01;

    /**
     * What one colour prints in.
     *
     * @param ink       id of the ink, process, or bare
     * @param deltaE    CIEDE2000 between art and print; 0 for process inks, whose gamut is not considered
     * @param assigned  whether the designer chose it
     */
    record Choice(String ink, double deltaE, boolean assigned) {
        boolean bare() {
            return ColourMatch.BARE.equals(ink);
        }
    }

    private final Press press;

    InkChoice(Press press) {
        this.press = press;
    }

    /**
     * Chooses for all colours of a piece of art.
     *
     * @param areas     visible area of each colour, ground left out
     * @param ground    colour of the art that prints nothing
     * @param assigned  inks that the designer chose, by colour; those that the press does not know are ignored
     */
    Map<Integer, Choice> choose(Map<Integer, Double> areas, OptionalInt ground, Map<Integer, String> assigned) {
        double light = ground.isPresent() ? Srgb.lab(ground.getAsInt()).l() : Double.NaN;
        double figure = figure(areas, light);
        Map<Integer, Choice> choices = new LinkedHashMap<>();
        for (int rgb : areas.keySet()) {
            Lab art = Srgb.lab(rgb);
            String ink = assigned.get(rgb);
            boolean chosen = ink != null && (press.knows(ink) || isProcess(ink));
            if (!chosen) {
                ink = byDefault(art, light, figure);
            }
            choices.put(rgb, new Choice(ink, press.colour(ink).map(c -> DeltaE.ciede2000(art, c)).orElse(0.0), chosen));
        }
        return choices;
    }

    private boolean isProcess(String ink) {
        return press.fullColour() && ColourMatch.PROCESS.equals(ink);
    }

    private static double figure(Map<Integer, Double> areas, double light) {
        double least = SPECK * areas.values().stream().mapToDouble(Double::doubleValue).sum();
        double figure = Double.NaN;
        for (Map.Entry<Integer, Double> entry : areas.entrySet()) {
            double l = Srgb.lab(entry.getKey()).l();
            if (entry.getValue() >= least && !(Math.abs(l - light) <= Math.abs(figure - light))) {
                figure = l;
            }
        }
        return figure;
    }

    private String byDefault(Lab art, double light, double figure) {
        if (press.fullColour()) {
            return ColourMatch.PROCESS;
        }
        if (press.inks().size() == 1) {
            boolean bare = Math.abs(art.l() - light) < Math.abs(art.l() - figure);
            return bare ? ColourMatch.BARE : press.inks().keySet().iterator().next();
        }
        String nearest = ColourMatch.BARE;
        double least = DeltaE.ciede2000(art, press.stock());
        for (Map.Entry<String, Lab> ink : press.inks().entrySet()) {
            double deltaE = DeltaE.ciede2000(art, ink.getValue());
            if (deltaE < least) {
                least = deltaE;
                nearest = ink.getKey();
            }
        }
        return nearest;
    }
}
