/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import org.pollex.colour.Lab;
import org.pollex.colour.Xyz;
import org.pollex.model.LabColour;

/**
 * What an ink looks like on a ground. Between the two drawdowns (over white, over black) a film lets through a share of
 * the light of its ground; per X, Y and Z the colour is taken as the one over black plus that share of the ground,
 * which is the two-backing method of Kubelka and Munk without light that goes to and fro between film and ground.
 * Right at both ends and close for covering inks; too rough to promise a colour for transparent ones on strongly
 * coloured grounds: that needs a measured overprint.
 */
public final class FilmColour {

    private FilmColour() {
    }

    /** A colour of the catalogue. */
    public static Lab lab(LabColour colour) {
        return new Lab(colour.l(), colour.a(), colour.b());
    }

    /** Colour of a film over a ground from its colours over white and over black. */
    public static Lab over(Lab onWhite, Lab onBlack, Lab ground) {
        Xyz white = onWhite.toXyz();
        Xyz black = onBlack.toXyz();
        Xyz below = ground.toXyz();
        return Lab.ofXyz(new Xyz(through(white.x(), black.x(), below.x() / Xyz.D50.x()),
                through(white.y(), black.y(), below.y() / Xyz.D50.y()),
                through(white.z(), black.z(), below.z() / Xyz.D50.z())));
    }

    private static double through(double onWhite, double onBlack, double ground) {
        return onBlack + (onWhite - onBlack) * Math.max(0, Math.min(1, ground));
    }
}
