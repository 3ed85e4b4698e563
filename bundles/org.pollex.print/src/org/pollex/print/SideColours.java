/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.pollex.colour.Srgb;
import org.pollex.print.arrange.FacePainter;

/**
 * Which colours of which marks a place shows, from what lies over one another there.
 *
 * <p>The topmost paint knocks out what is below it, and so does the ground of art, which then shows nothing itself. A
 * mark that overprints leaves what is below it; its own ground leaves it too. A translucent paint is mixed with the
 * colours of the art below it, and at last with the ground of its art or, if that has none, with white; the mixture is
 * a colour of its own. A label stands for the colours that print there, topmost first.
 */
final class SideColours implements FacePainter {

    private static final int WHITE = 0xffffff;

    /**
     * A colour of a mark.
     *
     * @param mark  position of the mark, lowest first
     * @param rgb   colour of the art, or of the ink of a line or plain shape
     */
    record Colour(int mark, int rgb) {
    }

    private final List<MarkShapes> marks;
    private final List<MarkShapes.Item> items = new ArrayList<>();
    private final List<Integer> markOf = new ArrayList<>();
    private final List<List<Colour>> labels = new ArrayList<>();
    private final Map<List<Colour>, Integer> known = new HashMap<>();
    private final int[] plain;

    SideColours(List<MarkShapes> marks) {
        this.marks = marks;
        for (int m = 0; m < marks.size(); m++) {
            for (MarkShapes.Item item : marks.get(m).items) {
                items.add(item);
                markOf.add(m);
            }
        }
        plain = new int[items.size()];
        intern(List.of());
        for (int i = 0; i < plain.length; i++) {
            boolean simple = items.get(i).opacity() == 1 && !marks.get(markOf.get(i)).overprints();
            plain[i] = simple ? intern(shown(markOf.get(i), items.get(i).rgb())) : -1;
        }
    }

    /** The colours that a label stands for, topmost first; none where nothing prints. */
    List<Colour> colours(int label) {
        return labels.get(label);
    }

    int labels() {
        return labels.size();
    }

    /** Visible area of every colour of a mark, from the areas of labels. */
    Map<Integer, Double> areas(int mark, Map<Integer, Double> sizes) {
        Map<Integer, Double> areas = new TreeMap<>();
        sizes.forEach((label, area) -> {
            for (Colour colour : labels.get(label)) {
                if (colour.mark() == mark) {
                    areas.merge(colour.rgb(), area, Double::sum);
                }
            }
        });
        return areas;
    }

    @Override
    public int label(int[] shapes, int count) {
        if (plain[shapes[0]] >= 0) {
            return plain[shapes[0]];
        }
        List<Colour> colours = new ArrayList<>(2);
        int i = 0;
        while (i < count) {
            int mark = markOf.get(shapes[i]);
            colours.addAll(shown(mark, mix(shapes, i, count)));
            if (!marks.get(mark).overprints()) {
                break;
            }
            while (i < count && markOf.get(shapes[i]) == mark) {
                i++;
            }
        }
        return intern(colours);
    }

    private List<Colour> shown(int mark, int rgb) {
        return marks.get(mark).isGround(rgb) ? List.of() : List.of(new Colour(mark, rgb));
    }

    private int intern(List<Colour> colours) {
        return known.computeIfAbsent(List.copyOf(colours), list -> {
            labels.add(list);
            return labels.size() - 1;
        });
    }

    /** The colour that the eye would see from one shape down, as the art means it. */
    private int mix(int[] shapes, int from, int count) {
        int mark = markOf.get(shapes[from]);
        boolean alone = marks.get(mark).overprints();
        int last = from;
        while (items.get(shapes[last]).opacity() < 1 && last + 1 < count
                && (!alone || markOf.get(shapes[last + 1]) == mark)) {
            last++;
        }
        MarkShapes.Item lowest = items.get(shapes[last]);
        int rgb = Srgb.over(lowest.rgb(), lowest.opacity(), marks.get(markOf.get(shapes[last])).ground.orElse(WHITE));
        for (int k = last - 1; k >= from; k--) {
            rgb = Srgb.over(items.get(shapes[k]).rgb(), items.get(shapes[k]).opacity(), rgb);
        }
        return rgb;
    }
}
