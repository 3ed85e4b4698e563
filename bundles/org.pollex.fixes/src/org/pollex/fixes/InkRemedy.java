/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.fixes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.commands.Command;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.edit.AssignInkCommand;
import org.pollex.edit.ChooseInksCommand;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;
import org.pollex.model.design.Design;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.print.ColourMatch;
import org.pollex.print.FilmColour;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.PrintedTones;
import org.pollex.rules.Finding;
import org.pollex.rules.Suite;

/**
 * Chooses another ink of the catalogues: the one nearest to the colour of the art, or, where an ink is lost on the
 * material, the nearest that stands out.
 */
final class InkRemedy {

    private static final double HARDLY_NEARER = 1;

    private final Suite suite;
    private final Design design;
    private final Printed printed;
    private final UnaryOperator<EObject> original;

    InkRemedy(Suite suite, Design design, Printed printed, UnaryOperator<EObject> original) {
        this.suite = suite;
        this.design = design;
        this.printed = printed;
        this.original = original;
    }

    Remedy nearest(Finding finding) {
        if (printed.method().isFullColour()) {
            return new Remedy.Refused("This method mixes its colours from process inks; change the art or the "
                    + "material.");
        }
        return finding.check().equals("ink-unmatched") ? forColour(finding) : forContrast(finding);
    }

    private List<Ink> choices() {
        return suite.catalogues().inks().stream()
                .filter(each -> each.getLab() != null && each.getKind() != InkKind.PROCESS).toList();
    }

    private Remedy forColour(Finding finding) {
        Optional<ColourMatch> found = printed.side(finding.side()).map(PrintedSide::matches).orElse(List.of()).stream()
                .filter(each -> each.ink().equals(finding.region())
                        && Math.abs(each.deltaE() - finding.measured().orElse(-1)) < 1e-6).findFirst();
        if (found.isEmpty()) {
            return new Remedy.Refused("The colour is no longer in the art.");
        }
        ColourMatch match = found.get();
        Ink nearest = choices().stream().min(Comparator.comparingDouble(each -> DeltaE.ciede2000(
                FilmColour.lab(each.getLab()), match.art()))).orElseThrow();
        double deltaE = DeltaE.ciede2000(FilmColour.lab(nearest.getLab()), match.art());
        if (deltaE > match.deltaE() - HARDLY_NEARER) {
            return new Remedy.Refused("No ink of the catalogues comes nearer: mix one, or let the client agree.");
        }
        boolean alone = printed.sides().stream().flatMap(each -> each.matches().stream())
                .filter(each -> each.ink().equals(match.ink())).map(ColourMatch::rgb).distinct().count() <= 1;
        if (design.getInks().contains(nearest.getId())) {
            return assigned(match, nearest);
        }
        if (design.getInks().size() < printed.method().getInksMax()) {
            List<String> inks = new ArrayList<>(design.getInks());
            inks.add(nearest.getId());
            List<Command> all = new ArrayList<>(List.of(new ChooseInksCommand((Design) original.apply(design), inks)));
            all.addAll(assignments(match.rgb(), nearest.getId()));
            return new Remedy.Done(Remedies.of("Choose the nearest ink", all), "Added " + nearest.getName() + ".");
        }
        if (alone && !match.ink().equals(ColourMatch.BARE)) {
            return replaced(match.ink(), nearest);
        }
        return new Remedy.Refused("The method prints at most " + printed.method().getInksMax()
                + " inks, and the others are in use; print this colour on the other side or choose another method.");
    }

    private Remedy assigned(ColourMatch match, Ink nearest) {
        List<Command> all = assignments(match.rgb(), nearest.getId());
        return all.isEmpty() ? new Remedy.Refused("The colour belongs to no art that is placed here.")
                : new Remedy.Done(Remedies.of("Choose the nearest ink", all), "Assigned " + nearest.getName() + ".");
    }

    private List<Command> assignments(int rgb, String ink) {
        List<Command> all = new ArrayList<>();
        for (Mark mark : Remedies.all(design)) {
            if (mark instanceof Placement placement) {
                all.add(new AssignInkCommand((Placement) original.apply(placement), Srgb.format(rgb), ink));
            }
        }
        return all;
    }

    private Remedy forContrast(Finding finding) {
        Optional<InkRegion> region = printed.side(finding.side()).map(PrintedSide::regions).orElse(List.of()).stream()
                .filter(each -> each.ink().equals(finding.region())).findFirst();
        Optional<Ink> now = printed.inks().stream().filter(each -> each.getId().equals(finding.region())).findFirst();
        if (region.isEmpty() || now.isEmpty()) {
            return new Remedy.Refused("Assign one of the two colours to another ink by hand.");
        }
        PrintedTones tones = PrintedTones.of(printed);
        Lab ground = tones.ground();
        boolean lightness = "L*".equals(finding.unit());
        double limit = finding.limit().orElse(0);
        Lab wished = FilmColour.lab(now.get().getLab());
        ToDoubleFunction<Ink> stands = ink -> lightness ? Math.abs(tones.of(ink).l() - ground.l())
                : DeltaE.ciede2000(tones.of(ink), ground);
        Optional<Ink> better = choices().stream()
                .filter(each -> !design.getInks().contains(each.getId()) && stands.applyAsDouble(each) > limit)
                .min(Comparator.comparingDouble(each -> DeltaE.ciede2000(FilmColour.lab(each.getLab()), wished)));
        return better.map(each -> replaced(finding.region(), each)).orElseGet(() -> new Remedy.Refused(
                "No ink of the catalogues stands out on this material; choose another material."));
    }

    /** Prints in another ink everything that prints in this one. */
    private Remedy replaced(String old, Ink ink) {
        List<Command> all = Colourway.inked(design, Map.of(old, ink.getId()), original);
        return new Remedy.Done(Remedies.of("Choose the nearest ink", all), "Prints in " + ink.getName() + " now.");
    }
}
