/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pollex.colour.Lab;
import org.pollex.making.session.Near;
import org.pollex.making.session.Refusal;
import org.pollex.model.catalogue.Entry;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.model.store.Catalogues;
import org.pollex.print.PrintedTones;
import org.pollex.print.retone.RetoneLimits;

/**
 * The material that a design is re-toned for, and which inks show on it.
 *
 * @param material  the material
 * @param tone      its mean colour
 */
record Ground(Material material, Lab tone) {

    /** An ink this much lighter than the ground, L*, is light on it. */
    private static final double LIGHTER = 15;

    static Ground of(Catalogues known, String id) throws Refusal {
        Material material = need(known.material(id), "material", id, known.materials());
        return new Ground(material, PrintedTones.ground(material));
    }

    static <T extends Entry> T need(Optional<T> entry, String kind, String id, List<T> all) throws Refusal {
        return entry.orElseThrow(() -> Refusal.wrongUse("There is no " + kind + " " + id + "; "
                + Near.hint(id, all.stream().map(Entry::getId).toList(), kind + "s") + "."));
    }

    /** How much lighter than the ground an ink prints, L*; negative when it prints darker. */
    double lighter(Ink ink) {
        return PrintedTones.over(ink, tone).l() - tone.l();
    }

    boolean isLight(Ink ink) {
        return lighter(ink) >= LIGHTER;
    }

    /** Whether what prints with a lightness, L*, is light on the ground. */
    boolean isLight(double l) {
        return l - tone.l() >= LIGHTER;
    }

    /** The ink that differs most in lightness from the ground. */
    Optional<Ink> strongest(List<Ink> inks) {
        return inks.stream().filter(ink -> ink.getKind() != InkKind.PROCESS && ink.getLab() != null)
                .max(Comparator.comparingDouble(ink -> Math.abs(lighter(ink))));
    }

    /** Limits of re-toned art: it is made of lines in ink and of bare lines, so the stricter of both kinds hold. */
    static RetoneLimits limits(Method method) {
        return new RetoneLimits(Math.max(method.getLineMin(), method.getGapMinReversed()),
                Math.max(method.getGapMin(), method.getLineMinReversed()));
    }
}
