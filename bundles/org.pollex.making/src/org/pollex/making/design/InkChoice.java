/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtRegion;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.print.PrintedTones;
import org.pollex.print.FilmColour;

/**
 * The inks of a new design for which none were asked.
 *
 * <ul>
 * <li>A method that mixes colours: none, the process inks mix every colour.
 * <li>A method of one ink: the ink that differs most from the material once it is printed on it (CIEDE2000).
 * <li>Else, for each colour of the art from the largest area down, the ink nearest to it over white (CIEDE2000), unless
 * the bare material is nearer; as many different inks as the method can print. When every colour is nearest to the bare
 * material, the ink that differs most from the material.
 * </ul>
 * White art is taken as its ground and asks for no ink. The inks come in the order of the catalogue, white first, so
 * that it lies below the others.
 */
final class InkChoice {

    private static final double TOLERANCE = 0.05;

    private final List<Ink> inks;
    private final Material material;
    private final Method method;

    InkChoice(List<Ink> catalogue, Material material, Method method) {
        this.inks = catalogue.stream().filter(ink -> ink.getKind() != InkKind.PROCESS && ink.getLab() != null).toList();
        this.material = material;
        this.method = method;
    }

    /** The inks for all the art of a design. */
    List<Ink> forArt(List<Art> arts) {
        if (method.isFullColour() || inks.isEmpty()) {
            return List.of();
        }
        if (method.getInksMax() == 1) {
            return List.of(strongest());
        }
        List<Ink> chosen = new ArrayList<>();
        Lab ground = PrintedTones.ground(material);
        for (int rgb : colours(arts)) {
            Lab colour = Srgb.lab(rgb);
            Ink nearest = inks.stream().min(Comparator.comparingDouble(
                    (Ink ink) -> DeltaE.ciede2000(colour, FilmColour.lab(ink.getLab())))).orElseThrow();
            boolean bare = DeltaE.ciede2000(colour, ground)
                    < DeltaE.ciede2000(colour, FilmColour.lab(nearest.getLab()));
            if (!bare && !chosen.contains(nearest) && chosen.size() < Math.max(1, method.getInksMax())) {
                chosen.add(nearest);
            }
        }
        if (chosen.isEmpty()) {
            chosen.add(strongest());
        }
        chosen.sort(Comparator.comparing((Ink ink) -> ink.getKind() != InkKind.WHITE).thenComparingInt(inks::indexOf));
        return chosen;
    }

    private Ink strongest() {
        Lab ground = PrintedTones.ground(material);
        return inks.stream().max(Comparator.comparingDouble(
                (Ink ink) -> DeltaE.ciede2000(PrintedTones.over(ink, ground), ground))).orElseThrow();
    }

    /** Colours that are not white, from the largest painted area down. */
    private static List<Integer> colours(List<Art> arts) {
        Map<Integer, Double> areas = new LinkedHashMap<>();
        for (Art art : arts) {
            for (ArtRegion region : art.regions()) {
                areas.merge(region.paint().rgb() & 0xffffff, area(region), Double::sum);
            }
        }
        areas.remove(0xffffff);
        return areas.entrySet().stream()
                .sorted(Map.Entry.<Integer, Double>comparingByValue(Comparator.reverseOrder()))
                .map(Map.Entry::getKey).toList();
    }

    /** Area within the rings, holes taken off as far as they run the other way; enough to tell large from small. */
    private static double area(ArtRegion region) {
        double twice = 0;
        for (double[] ring : region.path().rings(new java.awt.geom.AffineTransform(), TOLERANCE)) {
            for (int i = 0; i < ring.length; i += 2) {
                int next = (i + 2) % ring.length;
                twice += ring[i] * ring[next + 1] - ring[next] * ring[i + 1];
            }
        }
        return Math.abs(twice) / 2;
    }
}
