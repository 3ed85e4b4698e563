/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.pollex.colour.Srgb;
import org.pollex.print.InkChoice.Choice;
import org.pollex.print.SideColours.Colour;

/** The ink of every colour of a side, and the areas of ink that its labels become. */
final class SideInks {

    /** An ink standing for a colour of the art. */
    record Tone(String ink, int rgb) {
    }

    private final SideColours colours;
    private final Map<Colour, Choice> choices = new HashMap<>();
    private final Map<String, ColourMatch> matches = new LinkedHashMap<>();
    private final List<List<Tone>> labels = new ArrayList<>(List.of(List.of()));
    private final int[] labelOf;

    /**
     * @param sizes visible area of every label of the colours, mm²
     */
    SideInks(SideColours colours, List<MarkShapes> marks, Map<Integer, Double> sizes, Press press) {
        this.colours = colours;
        InkChoice choice = new InkChoice(press);
        for (int m = 0; m < marks.size(); m++) {
            MarkShapes mark = marks.get(m);
            Map<Integer, Double> areas = colours.areas(m, sizes);
            if (mark.isArt()) {
                choose(m, areas, choice.choose(areas, mark.ground, mark.assigned));
            } else {
                boolean process = press.fullColour() && !ColourMatch.BARE.equals(mark.ink);
                String ink = process ? ColourMatch.PROCESS : mark.ink;
                for (int rgb : areas.keySet()) {
                    choices.put(new Colour(m, rgb), new Choice(ink, 0, true));
                }
            }
        }
        Map<List<Tone>, Integer> known = new HashMap<>();
        known.put(List.of(), 0);
        labelOf = new int[colours.labels()];
        for (int label = 1; label < labelOf.length; label++) {
            List<Tone> tones = tones(colours.colours(label));
            labelOf[label] = known.computeIfAbsent(tones, list -> {
                labels.add(list);
                return labels.size() - 1;
            });
        }
    }

    private void choose(int mark, Map<Integer, Double> areas, Map<Integer, Choice> chosen) {
        chosen.forEach((rgb, choice) -> {
            choices.put(new Colour(mark, rgb), choice);
            double area = areas.get(rgb);
            matches.merge(rgb + " " + choice.ink() + " " + choice.assigned(),
                    new ColourMatch(rgb, Srgb.lab(rgb), choice.ink(), choice.deltaE(), choice.assigned(), area),
                    (one, more) -> new ColourMatch(rgb, one.art(), one.ink(), one.deltaE(), one.assigned(),
                            one.area() + more.area()));
        });
    }

    /** What prints where some colours lie over one another; of one ink only the topmost colour counts. */
    private List<Tone> tones(List<Colour> stack) {
        List<Tone> tones = new ArrayList<>();
        for (Colour colour : stack) {
            Choice choice = choices.get(colour);
            if (choice != null && !choice.bare()
                    && tones.stream().noneMatch(tone -> tone.ink().equals(choice.ink()))) {
                tones.add(new Tone(choice.ink(), colour.rgb()));
            }
        }
        return List.copyOf(tones);
    }

    /** The label of inks for a label of colours; 0 where no ink prints. */
    int inked(int colourLabel) {
        return labelOf[colourLabel];
    }

    /** What prints under a label of inks, topmost first. */
    List<Tone> tones(int label) {
        return labels.get(label);
    }

    /** Whether inks lie over one another anywhere. */
    boolean overprints() {
        return labels.stream().anyMatch(tones -> tones.size() > 1);
    }

    /** How the colours of art are printed, largest area first. */
    List<ColourMatch> matches() {
        return matches.values().stream().sorted(Comparator.comparingDouble(ColourMatch::area).reversed()
                .thenComparingInt(ColourMatch::rgb)).toList();
    }

    /** Whether a mark prints ink under a label of colours; lettering and shapes that stay bare count by their area. */
    boolean prints(int mark, int colourLabel, boolean bareToo) {
        for (Colour colour : colours.colours(colourLabel)) {
            Choice choice = choices.get(colour);
            if (colour.mark() == mark && (bareToo || choice != null && !choice.bare())) {
                return true;
            }
        }
        return false;
    }

    /** Whether a mark prints any ink at all. */
    boolean prints(int mark) {
        return choices.entrySet().stream().anyMatch(e -> e.getKey().mark() == mark && !e.getValue().bare());
    }

    /** Every tone with its place in the painting order: lowest mark first, then by colour. */
    List<Tone> order() {
        Map<Long, Tone> byMark = new TreeMap<>();
        choices.forEach((colour, choice) -> {
            if (!choice.bare()) {
                byMark.put((long) colour.mark() << 32 | colour.rgb(), new Tone(choice.ink(), colour.rgb()));
            }
        });
        return byMark.values().stream().distinct().toList();
    }
}
