/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import java.util.ArrayList;
import java.util.List;
import org.pollex.colour.Lab;
import org.pollex.colour.Xyz;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.Material;
import org.pollex.print.FilmColour;
import org.pollex.print.PrintedTones;

/** Colours of patterns. */
final class Palettes {

    private Palettes() {
    }

    /**
     * The colours of the texture, a single one beside that of the material; without any, the colour of the material
     * darker and lighter by its amount.
     */
    static List<Lab> colours(Material material) {
        List<Lab> colours = new ArrayList<>();
        for (LabColour colour : material.getTexture().getColours()) {
            colours.add(FilmColour.lab(colour));
        }
        if (colours.size() == 1) {
            colours.add(0, PrintedTones.ground(material));
        }
        if (colours.isEmpty()) {
            Lab mean = PrintedTones.ground(material);
            double amount = material.getTexture().getAmount();
            colours.add(new Lab(Math.max(0, mean.l() - amount), mean.a(), mean.b()));
            colours.add(new Lab(Math.min(100, mean.l() + amount), mean.a(), mean.b()));
        }
        return colours;
    }

    /** Steps from the first colour to the last, through all of them. */
    static Lab[] ramp(List<Lab> colours, int steps) {
        Lab[] ramp = new Lab[steps];
        for (int i = 0; i < steps; i++) {
            double at = i * (colours.size() - 1.0) / (steps - 1);
            int below = Math.min((int) at, Math.max(0, colours.size() - 2));
            Lab one = colours.get(below);
            Lab other = colours.get(Math.min(below + 1, colours.size() - 1));
            double t = at - below;
            ramp[i] = new Lab(one.l() + (other.l() - one.l()) * t, one.a() + (other.a() - one.a()) * t,
                    one.b() + (other.b() - one.b()) * t);
        }
        return ramp;
    }

    /** Two colours side by side seen as one: a mixture of their light. */
    static Lab light(Lab one, Lab other, double share) {
        Xyz a = one.toXyz();
        Xyz b = other.toXyz();
        return Lab.ofXyz(new Xyz(a.x() + (b.x() - a.x()) * share, a.y() + (b.y() - a.y()) * share,
                a.z() + (b.z() - a.z()) * share));
    }
}
