/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.colour.Xyz;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.Ink;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;

/**
 * What an ink looks like on the material, for judging contrast. Between the two drawdowns (over white, over black) a
 * film lets through a share of the light of its ground; per X, Y and Z the colour is taken as the one over black plus
 * that share of the ground, which is the two-backing method of Kubelka and Munk without light that goes to and fro
 * between film and ground. That is close for covering inks and too rough to promise a colour: a proof needs a measured
 * overprint.
 */
final class InkColours {

    private static final Xyz WHITE = new Lab(100, 0, 0).toXyz();

    private InkColours() {
    }

    static Lab lab(LabColour colour) {
        return new Lab(colour.l(), colour.a(), colour.b());
    }

    /** Colour of the bare material. */
    static Lab material(Printed printed) {
        LabColour colour = printed.material().getLab();
        return colour == null ? new Lab(95, 0, 0) : lab(colour);
    }

    /** Colour of a printed region on the material, or on white where the method lays white below. */
    static Lab printed(Printed printed, InkRegion region) {
        for (Ink ink : printed.inks()) {
            if (region.ink().equals(ink.getId()) && ink.getLab() != null) {
                return printed.method().isWhiteUnder() || ink.getLabOverBlack() == null ? lab(ink.getLab())
                        : over(lab(ink.getLab()), lab(ink.getLabOverBlack()), material(printed));
            }
        }
        return Srgb.lab(region.rgb());
    }

    /** Colour of a film over a ground from its colours over white and over black. */
    static Lab over(Lab overWhite, Lab overBlack, Lab ground) {
        Xyz white = overWhite.toXyz();
        Xyz black = overBlack.toXyz();
        Xyz below = ground.toXyz();
        return Lab.ofXyz(new Xyz(through(white.x(), black.x(), below.x() / WHITE.x()),
                through(white.y(), black.y(), below.y() / WHITE.y()),
                through(white.z(), black.z(), below.z() / WHITE.z())));
    }

    private static double through(double overWhite, double overBlack, double ground) {
        return overBlack + (overWhite - overBlack) * Math.max(0, Math.min(1, ground));
    }
}
