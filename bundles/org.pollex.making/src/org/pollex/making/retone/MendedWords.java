/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.pollex.print.retone.MendedInks;
import org.pollex.rules.Measures;

/** Tells what bringing art in several inks to the limits of the method did to it. */
final class MendedWords {

    private MendedWords() {
    }

    /** Sentences that each begin with a space. */
    static String of(MendedInks mended) {
        int n = mended.broken().size();
        return (n == 0 ? mended.mended() == 0 ? " Lines and gaps keep the limits as they are."
                : " Lines and gaps were brought to the limits."
                : " " + n + (n == 1 ? " place is" : " places are") + " still below the limits; see the check.")
                + gone(mended.lost(), " part", " too small to print in its ink is lost", " too small to print in their "
                        + "ink are lost")
                + gone(mended.filled(), " opening", " too small to stay open is filled", " too small to stay open are "
                        + "filled");
    }

    private static String gone(List<Polygon> gone, String what, String one, String many) {
        if (gone.isEmpty()) {
            return "";
        }
        Envelope box = gone.stream().max(Comparator.comparingDouble(Polygon::getArea)).orElseThrow()
                .getEnvelopeInternal();
        String size = Measures.mm(box.getWidth()) + " by " + Measures.mm(box.getHeight());
        return " " + gone.size() + what + (gone.size() == 1 ? one + ", " : "s" + many + ", the largest ") + size
                + "; look at it.";
    }
}
