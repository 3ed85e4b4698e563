/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;

/** What a design is printed on and with, as colours. Inks without a colour of their own are left out. */
final class Press {

    private final Lab stock;
    private final Map<String, Lab> inks = new LinkedHashMap<>();
    private final boolean fullColour;

    Press(Material material, Method method, List<Ink> inks) throws PrintException {
        if (material.getLab() == null) {
            throw new PrintException("Material " + material.getId()
                    + " has no colour; give it one in the catalogue.");
        }
        stock = FilmColour.lab(material.getLab());
        fullColour = method.isFullColour();
        for (Ink ink : inks) {
            if (ink.getLab() != null) {
                this.inks.put(ink.getId(), FilmColour.lab(ink.getLab()));
            }
        }
    }

    boolean fullColour() {
        return fullColour;
    }

    Lab stock() {
        return stock;
    }

    /** Colours over white by ink, in printing order. */
    Map<String, Lab> inks() {
        return inks;
    }

    /** Whether the word names an ink of the design or bare stock. */
    boolean knows(String ink) {
        return ColourMatch.BARE.equals(ink) || inks.containsKey(ink);
    }

    /** Which ink of the press it is, from 0; full colour comes before all others. */
    int turn(String ink) {
        return List.copyOf(inks.keySet()).indexOf(ink);
    }

    /** The colour of an ink over white or of bare stock. */
    Optional<Lab> colour(String ink) {
        return Optional.ofNullable(ColourMatch.BARE.equals(ink) ? stock : inks.get(ink));
    }

    /** The same as a screen shows it; black for an ink that is not there. */
    int rgb(String ink) {
        return colour(ink).map(Srgb::of).orElse(0);
    }
}
