/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.Ink;
import org.pollex.print.FilmColour;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;

/**
 * What a print looks like on the material, for judging contrast; {@link FilmColour} says how rough that is.
 */
final class InkColours {

    private InkColours() {
    }

    /** Colour of the bare material. */
    static Lab material(Printed printed) {
        LabColour colour = printed.material().getLab();
        return colour == null ? new Lab(95, 0, 0) : FilmColour.lab(colour);
    }

    /** Colour of a printed region on the material, or on white where the method lays white below. */
    static Lab printed(Printed printed, InkRegion region) {
        for (Ink ink : printed.inks()) {
            if (region.ink().equals(ink.getId()) && ink.getLab() != null) {
                return printed.method().isWhiteUnder() || ink.getLabOverBlack() == null ? FilmColour.lab(ink.getLab())
                        : FilmColour.over(FilmColour.lab(ink.getLab()), FilmColour.lab(ink.getLabOverBlack()),
                                material(printed));
            }
        }
        return Srgb.lab(region.rgb());
    }
}
