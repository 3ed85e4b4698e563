/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Srgb;
import org.pollex.model.catalogue.Ink;
import org.pollex.output.SampleDesign;
import org.pollex.print.InkRegion;
import org.pollex.print.Overprint;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.rules.rank.Ranked;
import org.pollex.rules.rank.Ranking;
import org.pollex.rules.rank.Verdict;

/** The small pictures of a ranking show what the large ones do. */
class PairPictureTest {

    private static final int HEIGHT = 312;
    private static final int BESIDE = 0x808080;

    /** Red left, white right, and where they meet the white lies over the red. */
    private static Printed overprinting() {
        Geometry left = SampleDesign.box(-5, -8, 7, 6);
        Geometry right = SampleDesign.box(-2, -8, 7, 6);
        Printed plain = new SampleDesign().material("Pale", "90 0 5").ink("smoke", "Smoke", "70 0 0", "25 0 0")
                .front("signal-red", 0xd02020, left).front("smoke", 0x808080, right).printed();
        PrintedSide side = plain.sides().get(0);
        List<InkRegion> regions = side.regions();
        PrintedSide over = new PrintedSide(side.face(), regions, side.marks(), side.types(), side.matches(),
                side.rasters(), side.notices(), List.of(new Overprint(regions, left.intersection(right))),
                side.meant());
        return plain.with(plain.material(), plain.inks(), List.of(over));
    }

    private static int at(BufferedImage image, Printed printed, double x, double y) {
        double scale = (HEIGHT - 2) / printed.item().faces().get(0).area().getEnvelopeInternal().getHeight();
        double left = printed.item().faces().get(0).area().getEnvelopeInternal().getMinX();
        double top = printed.item().faces().get(0).area().getEnvelopeInternal().getMinY();
        return image.getRGB((int) (1 + (x - left) * scale), (int) (1 + (y - top) * scale)) & 0xffffff;
    }

    private static double apart(int one, int other) {
        return DeltaE.ciede2000(Srgb.lab(one), Srgb.lab(other));
    }

    @Test
    void showsInksThatLieOverOneAnother() {
        Printed printed = overprinting();
        Ranked own = new Ranked(printed.material(), Ranking.inks(printed), 50, Verdict.READS, "", 0, 0, 1,
                OptionalDouble.empty(), true);
        BufferedImage small = PairPicture.of(printed, own, HEIGHT, BESIDE);
        BufferedImage large = MaterialPicture.of(printed, PictureOptions.of(254));
        // in the large picture the front's middle is 4 + 13 mm from the left and 4 + 15.5 mm from the top
        for (double x : new double[] {-3.5, 0, 3.5}) {
            assertEquals(0, apart(large.getRGB((int) ((17 + x) * 10), (int) ((19.5 - 5) * 10)) & 0xffffff,
                    at(small, printed, x, -5)), 1, "at " + x);
        }
        int both = at(small, printed, 0, -5);
        assertTrue(apart(both, at(small, printed, 3.5, -5)) > 5, "the upper ink hides the lower one");
        assertTrue(apart(both, at(small, printed, -3.5, -5)) > 5, "the upper ink is not there");
    }

    @Test
    void showsThemInTheInksOfThePairToo() {
        Printed printed = overprinting();
        List<Ink> own = Ranking.inks(printed);
        Ranked swapped = new Ranked(printed.material(), List.of(own.get(1), own.get(0)), 50, Verdict.READS, "", 0, 0, 1,
                OptionalDouble.empty(), false);
        BufferedImage small = PairPicture.of(printed, swapped, HEIGHT, BESIDE);
        int both = at(small, printed, 0, -5);
        // the red covers better than the smoke, so less of what is below shows through it
        double through = apart(both, at(small, printed, 3.5, -5));
        assertTrue(through > 1, "the upper ink hides the lower one: CIEDE2000 " + through);
    }
}
