/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.List;
import java.util.OptionalDouble;
import org.pollex.colour.Lab;
import org.pollex.model.catalogue.Material;
import org.pollex.print.MeantArt;
import org.pollex.print.PrintedMark;
import org.pollex.print.polarity.MarkPolarity;
import org.pollex.print.polarity.PrintedLight;
import org.pollex.print.stock.Stock;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/**
 * Does art print as a photographic negative? Holds the order of light and dark that the art means against the printed
 * one ({@link MarkPolarity}). Art of several colours is an error where nearly all of it is reversed and filled dark
 * masses print light. Art of one colour is never an error: lettering and plain marks are silent, the more of a picture
 * it is, the louder. Lines of text and plain shapes mean no order.
 *
 * <p>On a patterned stock the order is taken over five of its shades, seen past something as large as a mass: an ink
 * that is lighter than some and darker than others gets no verdict, since no order is kept or turned there; whether it
 * can be read at all is for {@code busy-ground}. Number of shades and size are judgement, without a source.
 */
public final class ReadsNegative implements Check {

    /** A patterned stock is judged on so many of its shades, each of which covers as much of it. */
    private static final int SHADES = 5;
    /** Shades are those of places as large as a mass of the art, mm. */
    private static final double MASS = 1.3;

    private static final String CURE = "re-tone the design for this material, so that light stays light and dark stays "
            + "dark, or choose a darker ink or a lighter material.";

    @Override
    public void check(CheckContext context, FindingSink sink) {
        Material material = context.printed().material();
        List<Lab> shades = Stock.patterned(material) ? Stock.of(material).shades(SHADES, MASS) : List.of();
        for (SideMeasures side : context.sides()) {
            for (MeantArt art : side.side().meant()) {
                if (MarkPolarity.canReverse(side.side(), art, context.tones(), shades)) {
                    MarkPolarity found = MarkPolarity.of(side.side(), art,
                            PrintedLight.of(side.side(), context.tones()),
                            PrintedLight.on(shades, side.side(), context.tones()));
                    judge(context, side, art, found, sink);
                }
            }
        }
    }

    private static void judge(CheckContext context, SideMeasures side, MeantArt art, MarkPolarity found,
            FindingSink sink) {
        double warning = context.setting("reads-negative.warning");
        OptionalDouble polarity = found.polarity(context.setting("reads-negative.least"));
        if (polarity.isEmpty() || polarity.getAsDouble() > warning) {
            return;
        }
        String name = side.side().marks().stream().filter(mark -> mark.id().equals(art.mark())).findFirst()
                .map(PrintedMark::name).orElse("The art");
        if (found.oneColour()) {
            oneColour(context, side, art, name, found, sink);
            return;
        }
        double error = context.setting("reads-negative.error");
        boolean bad = polarity.getAsDouble() <= error
                && found.reversedShare() > context.setting("reads-negative.mass-share");
        Material material = context.printed().material();
        sink.found(bad ? Severity.ERROR : Severity.WARNING, bad ? "masses" : "").on(side.name()).of(art.mark())
                .measured(polarity.getAsDouble(), bad ? error : warning, "polarity").at(found.reversed())
                .say(name + " reads as a negative on " + (material.getName() == null ? "the material"
                        : material.getName()) + ": what is darker in the art prints lighter (polarity "
                        + Measures.number(polarity.getAsDouble(), 2) + " of 1; dark masses on "
                        + Measures.number(100 * found.reversedShare(), 0) + " % of the art print light); " + CURE);
    }

    private static void oneColour(CheckContext context, SideMeasures side, MeantArt art, String name,
            MarkPolarity found, FindingSink sink) {
        double note = context.setting("reads-negative.mark-note");
        double warning = context.setting("reads-negative.mark-warning");
        double score = found.pictureness().orElse(0);
        if (score < note) {
            return;
        }
        boolean picture = score > warning;
        sink.found(picture ? Severity.WARNING : Severity.INFO, "one-colour").on(side.name()).of(art.mark())
                .measured(score, picture ? warning : note, "pictureness").at(found.reversed())
                .say(name + (picture ? " has light and shade" : " may have light and shade") + " (pictureness "
                        + Measures.number(score, 2) + " of 1) and prints lighter than its ground, so it can look like "
                        + "a negative; re-tone the design for this material and look at both, or choose a darker ink "
                        + "or a lighter material.");
    }
}
