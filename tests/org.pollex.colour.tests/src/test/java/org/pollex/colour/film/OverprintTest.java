/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.Xyz;

/**
 * Films and screens against measured prints: FOGRA39L (ISO 12647-2:2004/Amd 1, paper type 1 or 2, 115 g/m², D50, 2°,
 * white backing), as published in Debian's icc-profiles-free 2.0.1, zlib licence.
 */
class OverprintTest {

    private static final Map<String, Patch> PATCHES = Rows.of("fogra39.csv").stream()
            .collect(Collectors.toMap(row -> row[0] + " " + row[1] + " " + row[2] + " " + row[3], Patch::of,
                    (one, two) -> one));

    private record Patch(Xyz xyz, Lab lab) {
        static Patch of(String[] row) {
            double[] v = new double[row.length];
            for (int i = 0; i < v.length; i++) {
                v[i] = Double.parseDouble(row[i]);
            }
            return new Patch(new Xyz(v[4] / 100, v[5] / 100, v[6] / 100), new Lab(v[7], v[8], v[9]));
        }
    }

    private static Lab lab(String key) {
        return Lab.ofXyz(PATCHES.get(key).xyz());
    }

    /** The columns of the data agree with each other to 0.27 CIE76: no test of it can ask for more. */
    @Test
    void floorOfTheData() {
        double worst = PATCHES.values().stream().mapToDouble(p -> DeltaE.cie76(Lab.ofXyz(p.xyz()), p.lab())).max()
                .orElseThrow();
        assertTrue(worst <= 0.3, "XYZ and Lab differ by " + worst);
        assertTrue(worst > 0.05, "the data were expected to be rounded");
    }

    /** Paper, solids and solid overprints as ISO 12647-2:2004/Amd 1 aims at them: their XYZ is that colour. */
    @ParameterizedTest
    @CsvSource({"0 0 0 0, 95, 0, -2", "100 0 0 0, 55, -37, -50", "0 100 0 0, 48, 74, -3", "0 0 100 0, 89, -5, 93",
        "0 0 0 100, 16, 0, 0", "0 100 100 0, 47, 68, 48", "100 0 100 0, 50, -65, 27", "100 100 0 0, 24, 22, -46",
        "100 100 100 0, 23, 0, 0"})
    void solids(String patch, double l, double a, double b) {
        assertEquals(0, DeltaE.cie76(new Lab(l, a, b), lab(patch)), 0.27, patch);
    }

    /**
     * A film found from a solid on paper and on black shows that solid there again, but for what was brought to the
     * nearest film there can be: CIEDE2000 0.77 for yellow on black in one of the models, and it says so itself.
     */
    @ParameterizedTest
    @ValueSource(strings = {"100 0 0", "0 100 0", "0 0 100"})
    void solidsComeBackOverBothBackings(String ink) {
        for (FilmModel model : List.of(FilmModel.fast(), FilmModel.spectral())) {
            MeasuredFilm found = model.measured(lab(ink + " 0"), lab("0 0 0 0"), lab(ink + " 100"), lab("0 0 0 100"));
            double onPaper = error(model.over(lab("0 0 0 0"), List.of(found.film())), ink + " 0");
            double onBlack = error(model.over(lab("0 0 0 100"), List.of(found.film())), ink + " 100");
            assertEquals(0, Math.max(onPaper, onBlack), 0.8);
            assertEquals(Math.max(onPaper, onBlack), found.misfit(), 1e-9);
        }
    }

    /** Inks known over paper and over solid black, as a drawdown is: C, M, Y, printed in this order. */
    @Test
    void overprintsFromTwoBackings() {
        double broad = mean(FilmModel.fast(), 1);
        assertTrue(broad <= 3.4, "three bands, no trap: " + broad);
        double spectral = mean(FilmModel.spectral(), 0.8);
        assertTrue(spectral <= 2.6, "31 bands, trap 0.8: " + spectral);
    }

    /** A thickness of {@code trap} for an ink on wet ink. */
    private static double mean(FilmModel model, double trap) {
        Lab paper = lab("0 0 0 0");
        Lab black = lab("0 0 0 100");
        Film c = model.measured(lab("100 0 0 0"), paper, lab("100 0 0 100"), black).film();
        Film m = model.measured(lab("0 100 0 0"), paper, lab("0 100 0 100"), black).film();
        Film y = model.measured(lab("0 0 100 0"), paper, lab("0 0 100 100"), black).film();
        List<Double> errors = new ArrayList<>();
        errors.add(error(model.over(paper, List.of(c, m.thick(trap))), "100 100 0 0"));
        errors.add(error(model.over(paper, List.of(c, y.thick(trap))), "100 0 100 0"));
        errors.add(error(model.over(paper, List.of(m, y.thick(trap))), "0 100 100 0"));
        errors.add(error(model.over(paper, List.of(c, m.thick(trap), y.thick(trap))), "100 100 100 0"));
        return errors.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    private static double error(Lab predicted, String key) {
        return DeltaE.ciede2000(predicted, lab(key));
    }

    /** Broad bands, areas by Murray and Davies (X for cyan, Y for magenta and black, Z for yellow). */
    @Test
    void neugebauerOnTheSixtyFourPatches() {
        int[] levels = {0, 40, 70, 100};
        double sum = 0;
        double worst = 0;
        Xyz[] primaries = new Xyz[8];
        for (int set = 0; set < 8; set++) {
            primaries[set] = PATCHES.get(((set & 1) * 100) + " " + ((set >> 1 & 1) * 100) + " "
                    + ((set >> 2 & 1) * 100) + " 0").xyz();
        }
        for (int c : levels) {
            for (int m : levels) {
                for (int y : levels) {
                    double[] areas = {area(c, 0), area(m, 1), area(y, 2)};
                    Xyz shown = Tint.neugebauer(primaries, new double[][] {areas, areas, areas});
                    double error = DeltaE.cie76(Lab.ofXyz(shown), lab(c + " " + m + " " + y + " 0"));
                    sum += error;
                    worst = Math.max(worst, error);
                }
            }
        }
        assertTrue(sum / 64 <= 3.0, "mean " + sum / 64);
        assertTrue(worst <= 7, "worst " + worst);
    }

    private static double area(int nominal, int ink) {
        if (nominal == 0) {
            return 0;
        }
        double paper = value(PATCHES.get("0 0 0 0").xyz(), ink);
        double tint = value(PATCHES.get(ink == 0 ? nominal + " 0 0 0" : ink == 1 ? "0 " + nominal + " 0 0"
                : "0 0 " + nominal + " 0").xyz(), ink);
        double solid = value(PATCHES.get(ink == 0 ? "100 0 0 0" : ink == 1 ? "0 100 0 0" : "0 0 100 0").xyz(), ink);
        return Tint.area(-Math.log10(tint), -Math.log10(solid), -Math.log10(paper), 1);
    }

    private static double value(Xyz xyz, int ink) {
        return ink == 0 ? xyz.x() : ink == 1 ? xyz.y() : xyz.z();
    }

    /** The tone wedge: effective areas published with the data. */
    @Test
    void toneWedge() {
        int compared = 0;
        for (String[] row : Rows.of("fogra39_tvi.csv")) {
            int ink = "CMYK".indexOf(row[0].charAt(0));
            int nominal = Integer.parseInt(row[1]);
            String[] tint = {"0", "0", "0", "0"};
            String[] solid = {"0", "0", "0", "0"};
            tint[ink] = row[1];
            solid[ink] = "100";
            if (!PATCHES.containsKey(String.join(" ", tint))) {
                continue;
            }
            int value = ink == 0 ? 0 : ink == 2 ? 2 : 1;
            double paper = value(PATCHES.get("0 0 0 0").xyz(), value);
            double found = Tint.area(-Math.log10(value(PATCHES.get(String.join(" ", tint)).xyz(), value)),
                    -Math.log10(value(PATCHES.get(String.join(" ", solid)).xyz(), value)), -Math.log10(paper), 1);
            assertEquals(Double.parseDouble(row[2]), 100 * found, 0.006, row[0] + nominal);
            assertEquals(Double.parseDouble(row[3]), 100 * found - nominal, 0.006, row[0] + nominal);
            compared++;
        }
        assertTrue(compared >= 30, "only " + compared + " tones compared");
    }
}
