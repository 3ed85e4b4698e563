/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.polarity;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.print.ColourArea;
import org.pollex.print.ColourMatch;
import org.pollex.print.InkRegion;
import org.pollex.print.MeantArt;
import org.pollex.print.PrintedMark;
import org.pollex.print.PrintedSide;
import org.pollex.print.PrintedTones;
import org.pollex.print.PrintedType;

/**
 * Does the print of one piece of art keep its order of light and dark?
 *
 * @param interior      boundaries between colours of the art, paper that it encloses among them
 * @param outline       the art against the ground that it was drawn for; nothing when that is not known. Lines that
 *                      stand free on the ground are left out where the art has several colours: a line stays a line
 * @param fills         parts that touch, or that only thin dark line work divides, by the mean of what each prints
 * @param oneColour     whether all but a trace of the art is of one colour
 * @param pictureness   of art of one colour, lettering left out, from 0 to 1; nothing for art of several
 * @param reversed      dark masses that print lighter than the lighter parts they touch; of one-colour art that is
 *                      printed lighter than its ground, all of it. Valid, mm on the item, may be empty
 * @param reversedShare  their share of the area of the art, from 0 to 1
 * @param parts         how many fills of 0.25 mm2 and more the art has; 0 for art of one colour
 * @param lost          how many of them are not seen: nine tenths of what prints up to 0.5 mm round them is within
 *                      5 L* of them
 */
public record MarkPolarity(ToneOrder interior, ToneOrder outline, ToneOrder fills, boolean oneColour,
        OptionalDouble pictureness, Geometry reversed, double reversedShare,
        int parts, int lost) {

    /**
     * Whether any two tones of a piece of art print the other way round, as far as the inks of its colours tell. A
     * cheap question to ask first: where the answer is no, nothing can be reversed.
     *
     * @param side   the side
     * @param art    one of the art that the side means
     * @param tones  the colours of the print
     * @param shades colours of the bare stock that are asked about beside its mean; none where it has no pattern
     */
    public static boolean canReverse(PrintedSide side, MeantArt art, PrintedTones tones, List<Lab> shades) {
        return canReverse(side, art, tones, tones.ground())
                || shades.stream().anyMatch(shade -> canReverse(side, art, tones, shade));
    }

    private static boolean canReverse(PrintedSide side, MeantArt art, PrintedTones tones, Lab ground) {
        if (!side.marks().isEmpty() && !side.marks().get(0).id().equals(art.mark())) {
            return true;
        }
        List<double[]> steps = new ArrayList<>();
        art.ground().ifPresent(rgb -> steps.add(new double[] {Srgb.lab(rgb).l(), ground.l()}));
        for (ColourArea colour : art.areas()) {
            List<ColourMatch> of = side.matches().stream().filter(match -> match.rgb() == colour.rgb()).toList();
            if (of.size() != 1) {
                return true;
            }
            double printed = of.get(0).ink().equals(ColourMatch.BARE) ? ground.l()
                    : tones.laid(new InkRegion(of.get(0).ink(), colour.rgb(), colour.area())).over(ground).l();
            steps.add(new double[] {Srgb.lab(colour.rgb()).l(), printed});
        }
        return steps.stream().anyMatch(a -> steps.stream().anyMatch(b -> a[0] > b[0] && a[1] < b[1]));
    }

    /**
     * Measures one piece of art of a side on pixels of 0.025 mm, or coarser for art larger than about 30 mm. Lengths
     * are good to 6 %. Letters in the boxes of its real text do not count, since lettering reads either way, nor does
     * what marks above it cover.
     *
     * @param side     the side
     * @param art      one of the art that the side means
     * @param printed  how light the side is
     */
    public static MarkPolarity of(PrintedSide side, MeantArt art, PrintedLight printed) {
        return of(side, art, printed, List.of());
    }

    /**
     * The same on a patterned stock. Every boundary counts by what it shows on each of the shades, as if a place had
     * the same shade on both of its sides; so an ink that lies between the shades of its stock, lighter than some and
     * darker than others, keeps no order and turns none, whatever the mean colour says. What is reversed and lost is
     * that of the mean colour.
     *
     * @param printed  how light the side is on the mean colour of the stock
     * @param shades   how light it is on each of some shades, all of which cover as much of the stock; none where it
     *                 has no pattern
     */
    public static MarkPolarity of(PrintedSide side, MeantArt art, PrintedLight printed, List<PrintedLight> shades) {
        List<Geometry> letters = side.types().stream().filter(type -> type.mark().equals(art.mark()))
                .map(PrintedType::where).toList();
        List<String> ids = side.marks().stream().map(PrintedMark::id).toList();
        List<Geometry> above = side.marks().subList(ids.indexOf(art.mark()) + 1, ids.size()).stream()
                .map(PrintedMark::area).toList();
        return new PolarityMeasure(art, letters, above).measured(printed, shades);
    }

    /** The same for art that is alone on its side and has no real text. */
    public static MarkPolarity of(MeantArt art, PrintedLight printed) {
        return of(art, printed, List.of());
    }

    /** The same on shades of a patterned stock. */
    static MarkPolarity of(MeantArt art, PrintedLight printed, List<PrintedLight> shades) {
        return new PolarityMeasure(art, List.of(), List.of()).measured(printed, shades);
    }

    /** The same with other orders of light and dark. */
    MarkPolarity with(ToneOrder inside, ToneOrder outside, ToneOrder filled) {
        return new MarkPolarity(inside, outside, filled, oneColour, pictureness, reversed, reversedShare, parts, lost);
    }

    /**
     * What it is judged by: the outline for art of one colour, else the fills, else the interior.
     *
     * @param least  weighted length below which a line of the measure says nothing, mm
     */
    public OptionalDouble polarity(double least) {
        if (oneColour) {
            OptionalDouble edge = outline.polarity(least);
            return edge.isPresent() ? edge : interior.polarity(least);
        }
        OptionalDouble of = fills.polarity(least);
        return of.isPresent() ? of : interior.polarity(least);
    }
}
