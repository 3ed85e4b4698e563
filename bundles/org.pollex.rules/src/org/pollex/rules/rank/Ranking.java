/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.rank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.pollex.colour.Contrast;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;
import org.pollex.model.catalogue.Material;
import org.pollex.model.store.Catalogues;
import org.pollex.model.store.EntryNames;
import org.pollex.print.ColourMatch;
import org.pollex.print.InkRegion;
import org.pollex.print.Laid;
import org.pollex.print.Printed;
import org.pollex.print.PrintedTones;
import org.pollex.rules.CheckContext;
import org.pollex.rules.Measures;
import org.pollex.rules.MissingSettingException;

/**
 * Which inks on which materials show a design best? Every material of the catalogues is tried with the inks of the
 * design and with each one of them exchanged for every other ink; a design in full colour with the materials only.
 *
 * <p>Across each border (ink against bare material, ink against ink) counts the smaller of CIEDE2000 and
 * {@code hue + 1.5 |difference of L*|}, since small print lives by lightness; it becomes
 * {@code 1 - exp(-contrast / rank.contrast)}. On a patterned material the legibility of the ink does so too, and the
 * smaller holds. The score is 100 times 60 % of the worst border and 40 % of the mean by length. The form and its
 * numbers are judgement, and settings of the catalogue; by its form more contrast never lowers a score and more pattern
 * never raises it.
 */
public final class Ranking {

    private static final double WORST = 0.6;
    private static final double LIGHTNESS = 1.5;

    private final Printed printed;
    private final Catalogues catalogues;
    private final GroundNoise noise;
    private final List<Ink> own;
    private final List<Border> borders;
    private final double contrast;
    private final double hue;
    private final double legibility;
    private final double[] grades;

    /** The value of a border in some inks on some material. */
    private record Value(Border border, double share, double deltaE, double deltaL, double ratio,
            OptionalDouble legibility, boolean byNoise) {
    }

    private Ranking(Printed printed, Catalogues catalogues, GroundNoise noise) {
        this.printed = printed;
        this.catalogues = catalogues;
        this.noise = noise;
        own = inks(printed);
        borders = Border.of(printed);
        CheckContext settings = CheckContext.of(printed, catalogues);
        contrast = settings.setting("rank.contrast");
        hue = settings.setting("rank.hue");
        legibility = settings.setting("rank.legibility");
        grades = new double[] {settings.setting("rank.reads-well"), settings.setting("rank.reads"),
            settings.setting("rank.weak")};
    }

    /**
     * Every pair of inks and material, best first; pairs of one score in the order of the catalogue. Empty when the
     * design prints nothing.
     *
     * @throws MissingSettingException when no catalogue says how contrast is weighed
     */
    public static List<Ranked> of(Printed printed, Catalogues catalogues, GroundNoise noise) {
        Ranking ranking = new Ranking(printed, catalogues, noise);
        if (ranking.borders.isEmpty()) {
            return List.of();
        }
        Set<List<Ink>> sets = ranking.sets();
        return catalogues.materials().parallelStream().filter(material -> material.getLab() != null)
                .flatMap(material -> {
                    Colours colours = new Colours(PrintedTones.of(with(printed, material)));
                    return sets.stream().map(inks -> ranking.ranked(material, inks, colours));
                }).sorted(Comparator.comparingDouble(Ranked::score).reversed())
                .collect(Collectors.toCollection(ArrayList::new));
    }

    /** The inks of a design that are exchanged for others: those with a colour, in its order. */
    public static List<Ink> inks(Printed printed) {
        return printed.inks().stream().filter(ink -> ink.getLab() != null).toList();
    }

    private static Printed with(Printed printed, Material material) {
        return printed.with(material, printed.inks(), printed.sides());
    }

    /** The inks of the design, and the same with one exchanged. */
    private Set<List<Ink>> sets() {
        Set<List<Ink>> sets = new LinkedHashSet<>();
        sets.add(own);
        if (printed.method().isFullColour()) {
            return sets;
        }
        for (int i = 0; i < own.size(); i++) {
            for (Ink ink : catalogues.inks()) {
                if (ink.getLab() != null && ink.getKind() != InkKind.PROCESS && !own.contains(ink)) {
                    List<Ink> other = new ArrayList<>(own);
                    other.set(i, ink);
                    sets.add(other);
                }
            }
        }
        return sets;
    }

    private Ranked ranked(Material material, List<Ink> inks, Colours colours) {
        Map<String, Ink> inkOf = new HashMap<>();
        for (int i = 0; i < own.size(); i++) {
            inkOf.put(own.get(i).getId(), inks.get(i));
        }
        Value worst = null;
        double sum = 0;
        double length = 0;
        for (Border border : borders) {
            Value value = value(material, border, inkOf, colours);
            sum += value.share * border.length();
            length += border.length();
            if (worst == null || value.share < worst.share) {
                worst = value;
            }
        }
        double score = 100 * (WORST * worst.share + (1 - WORST) * sum / length);
        boolean same = inks.equals(own) && material.getId().equals(printed.material().getId());
        return new Ranked(material, inks, score, verdict(score), reason(worst, material, inkOf, score), worst.deltaE,
                worst.deltaL, worst.ratio, worst.legibility, same);
    }

    private Value value(Material material, Border border, Map<String, Ink> inkOf, Colours colours) {
        Lab one = colours.of(border.one(), inkOf);
        Lab other = border.other() == null ? colours.ground() : colours.of(border.other(), inkOf);
        double deltaE = DeltaE.ciede2000(one, other);
        double deltaL = Math.abs(one.l() - other.l());
        double share = share(Math.min(deltaE, hue + LIGHTNESS * deltaL), contrast);
        OptionalDouble read = border.other() == null ? colours.read(border.one(), inkOf, film -> noise.legibility(
                material, film)) : OptionalDouble.empty();
        double noisy = read.isPresent() ? share(read.getAsDouble(), legibility) : 1;
        return new Value(border, Math.min(share, noisy), deltaE, deltaL,
                Contrast.ratio(one.toXyz().y(), other.toXyz().y()), read, noisy < share);
    }

    private static double share(double value, double scale) {
        return 1 - Math.exp(-value / scale);
    }

    private Verdict verdict(double score) {
        return score >= grades[0] ? Verdict.READS_WELL : score >= grades[1] ? Verdict.READS
                : score >= grades[2] ? Verdict.WEAK : Verdict.LOST;
    }

    private String reason(Value worst, Material material, Map<String, Ink> inkOf, double score) {
        String one = name(worst.border.one(), inkOf);
        if (worst.byNoise) {
            String does = score >= grades[0] ? " takes little from " : score >= grades[1] ? " disturbs " : " drowns ";
            return "The pattern of " + EntryNames.of(material) + does + one + ": signal to noise "
                    + Measures.number(worst.legibility.orElseThrow(), 1) + ".";
        }
        String other = worst.border.other() == null ? EntryNames.of(material) : name(worst.border.other(), inkOf);
        String numbers = "CIEDE2000 " + Measures.number(worst.deltaE, 0) + ", lightness apart "
                + Measures.number(worst.deltaL, 0) + ".";
        if (worst.deltaL < 10) {
            return sentence(one) + " is nearly as light or dark as " + other + ": " + numbers;
        }
        if (score >= grades[0]) {
            return sentence(one) + " stands out clearly from " + other + ": " + numbers;
        }
        return "Least apart are " + one + " and " + other + ": " + numbers;
    }

    private static String sentence(String name) {
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }

    private static String name(InkRegion region, Map<String, Ink> inkOf) {
        Ink ink = inkOf(region, inkOf);
        return ink == null ? "the colour " + Srgb.format(region.rgb()) : EntryNames.of(ink);
    }

    /** Colours on one material, each worked out once. */
    private static final class Colours {

        private final PrintedTones tones;
        private final Map<String, Laid> films = new HashMap<>();
        private final Map<Laid, Lab> seen = new HashMap<>();
        private final Map<Laid, OptionalDouble> reads = new HashMap<>();

        Colours(PrintedTones tones) {
            this.tones = tones;
        }

        Lab ground() {
            return tones.ground();
        }

        private Laid film(InkRegion region, Map<String, Ink> inkOf) {
            Ink ink = inkOf(region, inkOf);
            return films.computeIfAbsent(ink == null ? Srgb.format(region.rgb()) : ink.getId(),
                    key -> ink == null ? tones.laid(region) : tones.laid(ink));
        }

        Lab of(InkRegion region, Map<String, Ink> inkOf) {
            return seen.computeIfAbsent(film(region, inkOf), film -> film.over(ground()));
        }

        OptionalDouble read(InkRegion region, Map<String, Ink> inkOf,
                Function<UnaryOperator<Lab>, OptionalDouble> noise) {
            return reads.computeIfAbsent(film(region, inkOf), film -> noise.apply(film::quick));
        }
    }

    /** The ink that stands for that of a region; null in full colour. */
    private static Ink inkOf(InkRegion region, Map<String, Ink> inkOf) {
        return region.ink().equals(ColourMatch.PROCESS) ? null : inkOf.get(region.ink());
    }
}
