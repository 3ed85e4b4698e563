/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.cgats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.colour.Lab;
import org.pollex.colour.film.FilmModel;
import org.pollex.colour.film.MeasuredFilm;

/** Files of measured colours: whole, in every spelling that is usual, damaged, too large. */
class CgatsReaderTest {

    private static final String TABLE = """
            CGATS.17
            NUMBER_OF_FIELDS 4
            BEGIN_DATA_FORMAT
            SAMPLE_NAME LAB_L LAB_A LAB_B
            END_DATA_FORMAT
            NUMBER_OF_SETS 2
            BEGIN_DATA
            "harbour red, white" 46 66 44
            "harbour red, black" 30.5 40 -22.25
            END_DATA
            """;

    private static List<MeasuredSample> read(String text) throws CgatsException {
        return read(text, StandardCharsets.UTF_8);
    }

    private static List<MeasuredSample> read(String text, Charset charset) throws CgatsException {
        try {
            return CgatsReader.read(new ByteArrayInputStream(text.getBytes(charset)), "card.txt");
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static String refused(String text) {
        return assertThrows(CgatsException.class, () -> read(text)).getMessage();
    }

    /**
     * FOGRA39L (see the notice in the file) against a table made from the same publication by other means: 190 samples
     * with the Lab that it gives.
     */
    @Test
    void publishedMeasurements() throws CgatsException, IOException {
        List<MeasuredSample> samples;
        try (InputStream in = getClass().getResourceAsStream("fogra39.ti3")) {
            samples = CgatsReader.read(in, "fogra39.ti3");
        }
        List<String> rows;
        try (InputStream in = Lab.class.getResourceAsStream("film/fogra39.csv")) {
            rows = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).toList();
        }
        assertEquals(rows.size(), samples.size());
        for (String row : rows) {
            String[] v = row.split(",");
            Lab lab = new Lab(Double.parseDouble(v[7]), Double.parseDouble(v[8]), Double.parseDouble(v[9]));
            assertTrue(samples.stream().anyMatch(each -> each.colour().equals(lab)), row);
        }
        assertEquals(new MeasuredSample("1", new Lab(95, 0, -2), 29), samples.get(0));
    }

    /**
     * Published solids of cyan, magenta and yellow over paper and over solid black: films, nearly clear. Their contrast
     * ratios are those of the published luminances, by hand.
     */
    @Test
    void publishedPairsAreFilms() throws CgatsException, IOException {
        Map<String, Lab> samples;
        try (InputStream in = getClass().getResourceAsStream("fogra39.ti3")) {
            samples = CgatsReader.read(in, "fogra39.ti3").stream()
                    .collect(Collectors.toMap(MeasuredSample::name, MeasuredSample::colour));
        }
        String[][] pairs = {{"73", "1266"}, {"9", "1262"}, {"649", "1278"}};
        double[] ratios = {1.18 / 22.93, 1.18 / 16.79, 2.04 / 74.16};
        for (int i = 0; i < pairs.length; i++) {
            MeasuredFilm film = FilmModel.spectral().measured(samples.get(pairs[i][0]), samples.get("1"),
                    samples.get(pairs[i][1]), samples.get("1260"));
            assertTrue(film.misfit() <= MeasuredFilm.DOUBTFUL, pairs[i][0] + " misses by " + film.misfit());
            assertEquals(ratios[i], film.opacity(), 0.001, pairs[i][0]);
        }
    }

    @Test
    void namesInQuotationMarksAndAllLineEndings() throws CgatsException {
        List<MeasuredSample> expected = List.of(new MeasuredSample("harbour red, white", new Lab(46, 66, 44), 8),
                new MeasuredSample("harbour red, black", new Lab(30.5, 40, -22.25), 9));
        assertEquals(expected, read(TABLE));
        assertEquals(expected, read(TABLE.replace("\n", "\r\n")));
        assertEquals(expected, read(TABLE.replace("\n", "\r")));
        assertEquals(expected, read("\ufeff" + TABLE));
        assertEquals(expected, read(TABLE.replace("CGATS.17", "CGATS.17 # made by \"hand")));
        assertEquals(expected, read(TABLE.replace(" ", "\t").replace("harbour\tred,\t", "harbour red, ")));
        assertEquals("say \"red\"", read(TABLE.replace("harbour red, white", "say \"\"red\"\"")).get(0).name());
    }

    @Test
    void otherAlphabets() throws CgatsException {
        String text = TABLE.replace("harbour red, white", "küstenrot");
        assertEquals("küstenrot", read(text).get(0).name());
        assertEquals("küstenrot", read(text, StandardCharsets.ISO_8859_1).get(0).name());
    }

    @Test
    void nameElseIdElseLine() throws CgatsException {
        assertEquals("harbour red, white", read(TABLE.replace("SAMPLE_NAME", "SAMPLE_ID")).get(0).name());
        assertEquals("line 8", read(TABLE.replace("SAMPLE_NAME", "PATCH")).get(0).name());
        assertEquals("line 8", read(TABLE.replace("harbour red, white", " ")).get(0).name());
    }

    /** XYZ of CGATS has its white at 100; Y 18.42 is L* 50.0 by CIE 15. */
    @Test
    void xyz() throws CgatsException {
        Lab grey = read(TABLE.replace("LAB_L LAB_A LAB_B", "XYZ_X XYZ_Y XYZ_Z").replace("46 66 44",
                "17.76 18.42 15.20").replace("40 -22.25", "28 20")).get(0).colour();
        assertEquals(50.0, grey.l(), 0.01);
        assertEquals(0, grey.chroma(), 0.1);
    }

    @Test
    void tablesWithoutColoursArePassedOver() throws CgatsException {
        String curves = """
                NUMBER_OF_FIELDS 2
                BEGIN_DATA_FORMAT
                SAMPLE_ID CMYK_K
                END_DATA_FORMAT
                BEGIN_DATA
                1 50
                END_DATA
                """;
        assertEquals(2, read(curves + TABLE).size());
        assertEquals(4, read(TABLE + curves + TABLE).size());
        assertEquals("card.txt holds no colours: it names SAMPLE_ID CMYK_K; export it with LAB_L LAB_A LAB_B, XYZ_X "
                + "XYZ_Y XYZ_Z or reflectances.", refused(curves));
    }

    private static String spectrum(String prefix, double... values) {
        StringBuilder names = new StringBuilder("SAMPLE_NAME");
        StringBuilder row = new StringBuilder("grey");
        for (int i = 0; i < values.length; i++) {
            names.append(' ').append(prefix).append(380 + 10 * i);
            row.append(String.format(Locale.ROOT, " %.4f", values[i]));
        }
        return "CGATS.17\nBEGIN_DATA_FORMAT\n" + names + "\nEND_DATA_FORMAT\nBEGIN_DATA\n" + row + "\nEND_DATA\n";
    }

    private static double[] flat(double value) {
        double[] flat = new double[36];
        java.util.Arrays.fill(flat, value);
        return flat;
    }

    /** A surface that reflects 18.42 % of all light is the grey of L* 50.0, whatever the observer. */
    @Test
    void reflectancesAsSharesAndAsPercent() throws CgatsException {
        for (String prefix : List.of("SPECTRAL_NM", "NM_", "nm", "SPEC_", "R_")) {
            for (double value : new double[] {0.1842, 18.42}) {
                Lab grey = read(spectrum(prefix, flat(value))).get(0).colour();
                assertEquals(50.0, grey.l(), 0.01, prefix + value);
                assertEquals(0, grey.chroma(), 0.01, prefix + value);
            }
        }
    }

    @Test
    void reflectancesInPairs() throws CgatsException {
        StringBuilder names = new StringBuilder("SAMPLE_NAME");
        StringBuilder row = new StringBuilder("grey");
        for (int nm = 400; nm <= 700; nm += 20) {
            names.append(" SPECTRAL_NM SPECTRAL_PCT");
            row.append(" ").append(nm).append(" 1.842");
        }
        String text = "BEGIN_DATA_FORMAT\n" + names + "\nEND_DATA_FORMAT\nBEGIN_DATA\n" + row + "\nEND_DATA\n";
        // CIE 15: L* = 116 (0.01842)^(1/3) - 16
        assertEquals(14.63, read(text).get(0).colour().l(), 0.01);
    }

    @Test
    void aSpectrumWithHoles() {
        String text = spectrum("NM_", flat(0.5)).replace("NM_550", "X1").replace("NM_560", "X2");
        assertEquals("card.txt, line 6: the spectrum has no value near 550 nm; it must reach from 400 to 700 nm in "
                + "steps of 20 nm or less.", refused(text));
    }

    @Test
    void otherLightsAreRefusedUnlessSpectraStandBeside() throws CgatsException {
        String other = "WEIGHTING_FUNCTION \"ILLUMINANT, D65\"\nWEIGHTING_FUNCTION \"OBSERVER, 10 degree\"\n";
        assertEquals("card.txt, line 9: the colours are for D65 and the 10 degree observer; export them for D50 and "
                + "the 2 degree observer, or with reflectances.",
                refused(TABLE.replace("NUMBER_OF_FIELDS", other + "NUMBER_OF_FIELDS")));
        assertEquals(2, read(TABLE.replace("NUMBER_OF_FIELDS", other.replace("D65", "D50").replace("10", "2")
                + "NUMBER_OF_FIELDS")).size());
        String both = spectrum("NM_", flat(0.1842)).replace("SAMPLE_NAME", "SAMPLE_NAME LAB_L LAB_A LAB_B")
                .replace("grey", "grey 70 0 0");
        assertEquals(70, read(both).get(0).colour().l(), 0.01);
        assertEquals(50, read(other + both).get(0).colour().l(), 0.01);
    }

    @Test
    void decimalCommas() {
        assertEquals("card.txt, line 9: LAB_L is \"30,5\"; write decimals with a point, or export the file with "
                + "points.", refused(TABLE.replace("30.5", "30,5")));
    }

    @Test
    void missingAndWrongValues() {
        assertEquals("card.txt, line 9: there are 3 values and 4 fields are named; fill in what is missing, and put "
                + "names with blanks in quotation marks.", refused(TABLE.replace(" -22.25", "")));
        assertEquals("card.txt, line 8: there are 6 values and 4 fields are named; fill in what is missing, and put "
                + "names with blanks in quotation marks.",
                refused(TABLE.replace("\"harbour red, white\"", "harbour red, white")));
        assertEquals("card.txt, line 8: LAB_A is \"n/a\", which is no number; measure the sample again or take its "
                + "line out.", refused(TABLE.replace("46 66", "46 n/a")));
        assertEquals("card.txt, line 8: the colour L* 146.0 a* 66.0 b* 44.0 is none that a print can have; measure the "
                + "sample again or take its line out.", refused(TABLE.replace("46 66", "146 66")));
        assertTrue(refused(TABLE.replace("46 66", "46 NaN")).contains("LAB_A is \"NaN\""));
        assertTrue(refused(TABLE.replace("46 66", "46 1e999")).contains("none that a print can have"));
        assertEquals("card.txt, line 8: a quotation mark is not closed; close it.",
                refused(TABLE.replace("white\" 46", "white 46")));
    }

    @Test
    void cutOffAnywhere() throws CgatsException {
        int whole = TABLE.indexOf("END_DATA\n", TABLE.indexOf("BEGIN_DATA\n")) + "END_DATA".length();
        for (int i = 0; i < whole; i++) {
            String text = TABLE.substring(0, i);
            String message = refused(text);
            assertTrue(message.startsWith("card.txt") && message.endsWith(".") && message.contains(";"),
                    i + ": " + message);
        }
        assertEquals(2, read(TABLE.substring(0, whole)).size());
        assertEquals("card.txt, line 7: NUMBER_OF_SETS is 3 and 2 samples are there; the file is cut off or changed, "
                + "export it again.", refused(TABLE.replace("SETS 2", "SETS 3")));
        assertEquals("card.txt, line 3: NUMBER_OF_FIELDS is 5 and 4 fields are named; export the file again.",
                refused(TABLE.replace("FIELDS 4", "FIELDS 5")));
    }

    @Test
    void notThisKindOfFile(@TempDir Path folder) throws IOException {
        assertEquals("card.txt is no CGATS text: it has no BEGIN_DATA_FORMAT and no BEGIN_DATA; export the "
                + "measurements as CGATS text.", refused("name;L;a;b\nred;1;2;3\n"));
        assertTrue(refused("").startsWith("card.txt is no CGATS text"));
        assertEquals("card.txt is no plain text; export the measurements as CGATS text.",
                refused("P\u0000K\u0003"));
        assertTrue(refused("BEGIN_DATA\n1 2 3\nEND_DATA\n").contains("line 1: the data begin without"));
        assertTrue(refused("BEGIN_DATA_FORMAT\nLAB_L LAB_A LAB_B\nEND_DATA_FORMAT\nBEGIN_DATA\nEND_DATA\n")
                .startsWith("card.txt holds no samples"));
        assertEquals("gone.txt is no file; choose the text file of the measuring program.",
                assertThrows(CgatsException.class, () -> CgatsReader.read(folder.resolve("gone.txt"))).getMessage());
        assertThrows(CgatsException.class, () -> CgatsReader.read(folder));
        Path good = Files.writeString(folder.resolve("card.txt"), TABLE);
        assertEquals(2, assertReads(good).size());
    }

    private static List<MeasuredSample> assertReads(Path file) {
        try {
            return CgatsReader.read(file);
        } catch (CgatsException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void hugeFilesAreRefused() {
        String many = TABLE.replace("NUMBER_OF_SETS 2\n", "").replace("END_DATA\n",
                "x 1 2 3\n".repeat(CgatsReader.SAMPLES_MOST) + "END_DATA\n").replace("DATA_FORMAT\nx", "DATA_FORMAT\n");
        assertTrue(refused(many.replaceFirst("(?s)^.*CGATS.17", "CGATS.17")).contains("more than 20000 samples"));
        assertTrue(refused("NUMBER_OF_SETS 999999999\n").contains("at most 20000 are read"));
        assertTrue(refused("BEGIN_DATA_FORMAT\n" + "LAB_L ".repeat(CgatsReader.FIELDS_MOST + 1) + "\n")
                .contains("more than 1000 fields"));
        assertEquals("card.txt is larger than 16 MB; export only the samples of the inks.",
                refused("#".repeat(CgatsReader.BYTES_MOST + 1)));
        assertEquals(MeasuredSample.NAME_MOST, assertName("n".repeat(5000)).length());
    }

    private static String assertName(String name) {
        try {
            return read(TABLE.replace("harbour red, white", name)).get(0).name();
        } catch (CgatsException e) {
            throw new AssertionError(e);
        }
    }
}
