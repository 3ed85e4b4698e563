/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.cgats;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pollex.colour.Lab;
import org.pollex.colour.Xyz;
import org.pollex.colour.film.Reflectance;

/**
 * The fields that a table names, and which of them give the colour: Lab before XYZ before reflectances.
 *
 * <p>Reflectances are a column for each wavelength ({@code SPECTRAL_NM400}, {@code NM_400}, {@code nm400},
 * {@code SPEC_400}, {@code R_400}), or pairs of columns {@code SPECTRAL_NM} and {@code SPECTRAL_DEC} or
 * {@code SPECTRAL_PCT}. Where the name does not tell, values count as percent when one of the table is above 2.
 */
final class CgatsFields {

    private static final Pattern WAVELENGTH = Pattern.compile("(?:SPECTRAL_|SPEC_?|R_?)?(?:NM_?)?(\\d{3})(?:_?NM)?");
    private static final double PERCENT_ABOVE = 2;

    private final String file;
    private final List<String> names;
    private final int[] lab;
    private final int[] xyz;
    private final TreeMap<Integer, Integer> bands = new TreeMap<>();
    private final List<Integer> pairs = new ArrayList<>();

    CgatsFields(String file, List<String> names) {
        this.file = file;
        this.names = List.copyOf(names);
        lab = places("LAB_L", "LAB_A", "LAB_B");
        xyz = places("XYZ_X", "XYZ_Y", "XYZ_Z");
        for (int i = 0; i < names.size(); i++) {
            Matcher band = WAVELENGTH.matcher(names.get(i));
            if (band.matches() && !Character.isDigit(names.get(i).charAt(0))) {
                bands.put(Integer.valueOf(band.group(1)), i);
            }
            if (names.get(i).equals("SPECTRAL_NM") && i + 1 < names.size()
                    && names.get(i + 1).matches("SPECTRAL_(DEC|PCT)")) {
                pairs.add(i);
            }
        }
    }

    private int[] places(String... wanted) {
        int[] places = new int[wanted.length];
        for (int i = 0; i < wanted.length; i++) {
            places[i] = names.indexOf(wanted[i]);
            if (places[i] < 0) {
                return new int[0];
            }
        }
        return places;
    }

    int count() {
        return names.size();
    }

    /** Whether a colour can be told from the fields. */
    boolean coloured() {
        return lab.length > 0 || xyz.length > 0 || spectral();
    }

    /** Whether the colour is worked out from reflectances, and so is for D50 and 2 degrees whatever the file says. */
    boolean spectral() {
        return pairs.size() > 1 || bands.size() > 1;
    }

    /**
     * The colour worked out from the reflectances.
     *
     * @param percent  whether columns of wavelengths hold percent
     */
    Lab ofSpectrum(List<Token> row, int line, boolean percent) throws CgatsException {
        TreeMap<Double, Double> points = new TreeMap<>();
        for (int at : pairs) {
            double share = names.get(at + 1).equals("SPECTRAL_PCT") ? 100 : 1;
            points.put(number(row, at, line), number(row, at + 1, line) / share);
        }
        if (pairs.isEmpty()) {
            for (var band : bands.entrySet()) {
                points.put(band.getKey().doubleValue(), number(row, band.getValue(), line) / (percent ? 100 : 1));
            }
        }
        try {
            return Reflectance.lab(points);
        } catch (IllegalArgumentException e) {
            throw new CgatsException(file, line, e.getMessage());
        }
    }

    /** Whether one of the reflectances in columns of wavelengths is too high for a share. */
    boolean percent(List<Token> row, int line) throws CgatsException {
        for (int at : bands.values()) {
            if (number(row, at, line) > PERCENT_ABOVE) {
                return true;
            }
        }
        return false;
    }

    /** The colour that the file gives as Lab or XYZ. */
    Lab plain(List<Token> row, int line) throws CgatsException {
        if (lab.length > 0) {
            return new Lab(number(row, lab[0], line), number(row, lab[1], line), number(row, lab[2], line));
        }
        return Lab.ofXyz(new Xyz(number(row, xyz[0], line) / 100, number(row, xyz[1], line) / 100,
                number(row, xyz[2], line) / 100));
    }

    /** Whether the file gives the colour as Lab or XYZ. */
    boolean isPlain() {
        return lab.length > 0 || xyz.length > 0;
    }

    private double number(List<Token> row, int at, int line) throws CgatsException {
        String text = row.get(at).text();
        if (text.matches("[+-]?\\d*,\\d+")) {
            throw new CgatsException(file, line, names.get(at) + " is \"" + text
                    + "\"; write decimals with a point, or export the file with points.");
        }
        if (text.length() > 40 || !text.matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?")) {
            throw new CgatsException(file, line, names.get(at) + " is \"" + CgatsReader.shortened(text)
                    + "\", which is no number; measure the sample again or take its line out.");
        }
        return Double.parseDouble(text);
    }

    /** The name of a sample: its name, else its id, else its line. */
    String name(List<Token> row, int line) {
        for (String field : List.of("SAMPLE_NAME", "SAMPLENAME", "SAMPLE_ID", "SAMPLEID")) {
            int at = names.indexOf(field);
            if (at >= 0 && !row.get(at).text().isBlank()) {
                String name = row.get(at).text().strip();
                return name.length() > MeasuredSample.NAME_MOST ? name.substring(0, MeasuredSample.NAME_MOST) : name;
            }
        }
        return "line " + line;
    }

    /** What the table names, for a sentence. */
    String listed() {
        return CgatsReader.shortened(String.join(" ", names));
    }
}
