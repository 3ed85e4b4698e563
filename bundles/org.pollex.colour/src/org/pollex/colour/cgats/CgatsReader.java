/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.cgats;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.pollex.colour.Lab;

/**
 * Reads measured colours from CGATS text (the keyword-value form of ANSI CGATS.17 and ISO 28178; the details here are
 * from memory of them and from published files): a header, the names of the fields between BEGIN_DATA_FORMAT and
 * END_DATA_FORMAT, one sample a line between BEGIN_DATA and END_DATA, several such tables one after the other. Tables
 * without a colour are passed over.
 *
 * <p>Words are parted by blanks and tabs, names with blanks stand in quotation marks, # begins a comment, lines end in
 * any of the three ways. Text is UTF-8, else ISO 8859-1. Colours are Lab, XYZ (white at 100) or reflectances; see
 * {@link CgatsFields}. Colours given for another light than D50 or another observer than 2 degrees are refused unless
 * reflectances stand beside them, from which the colour is then worked out.
 *
 * <p>Bounds: {@value #BYTES_MOST} bytes, {@value #FIELDS_MOST} fields, {@value #SAMPLES_MOST} samples.
 */
public final class CgatsReader {

    /** Largest file. */
    static final int BYTES_MOST = 16 << 20;
    /** Most fields of a table. */
    static final int FIELDS_MOST = 1000;
    /** Most samples of a file. */
    static final int SAMPLES_MOST = 20_000;

    private static final int SHOWN_MOST = 60;
    private static final double CHROMA_MOST = 250;

    private final String file;
    private final List<String> lines;
    private final List<MeasuredSample> samples = new ArrayList<>();
    private final Viewing viewing = new Viewing();
    private final List<String> passed = new ArrayList<>();
    private int at;
    /** What the header says is to come, below 0 when it says nothing. */
    private int fields = -1;
    private int sets = -1;

    private CgatsReader(String file, String text) {
        this.file = file;
        this.lines = text.lines().toList();
    }

    /**
     * The samples of a file, in its order; at least one.
     *
     * @throws CgatsException when it cannot be read or holds no colours
     */
    public static List<MeasuredSample> read(Path file) throws CgatsException {
        String name = file.getFileName() == null ? file.toString() : file.getFileName().toString();
        if (!Files.isRegularFile(file)) {
            throw new CgatsException(name + " is no file; choose the text file of the measuring program.");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return read(in, name);
        } catch (IOException e) {
            throw new CgatsException(name + " cannot be read; check the permissions and the disk.");
        }
    }

    /**
     * The samples of a text, in its order; at least one. The caller closes the stream.
     *
     * @param name  what messages call it
     * @throws CgatsException when it holds no colours or is damaged
     */
    public static List<MeasuredSample> read(InputStream in, String name) throws CgatsException, IOException {
        byte[] bytes = in.readNBytes(BYTES_MOST + 1);
        if (bytes.length > BYTES_MOST) {
            throw new CgatsException(name + " is larger than " + (BYTES_MOST >> 20)
                    + " MB; export only the samples of the inks.");
        }
        return new CgatsReader(name, text(bytes, name)).all();
    }

    private static String text(byte[] bytes, String name) throws CgatsException {
        String text;
        try {
            text = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            text = new String(bytes, StandardCharsets.ISO_8859_1);
        }
        if (text.chars().anyMatch(c -> c < ' ' && c != '\t' && c != '\n' && c != '\r' && c != '\f' && c != 0x1a)) {
            throw new CgatsException(name + " is no plain text; export the measurements as CGATS text.");
        }
        return text.startsWith("\ufeff") ? text.substring(1) : text;
    }

    private List<MeasuredSample> all() throws CgatsException {
        boolean table = false;
        List<Token> line;
        List<String> names = null;
        while ((line = next()) != null) {
            Token first = line.get(0);
            if (first.is("BEGIN_DATA_FORMAT")) {
                names = format(line);
            } else if (first.is("BEGIN_DATA")) {
                if (names == null) {
                    throw new CgatsException(file, at,
                            "the data begin without BEGIN_DATA_FORMAT before them; export the file again.");
                }
                table = true;
                data(new CgatsFields(file, names));
            } else {
                header(line);
            }
        }
        if (!table) {
            throw new CgatsException(file + (names == null ? " is no CGATS text: it has no BEGIN_DATA_FORMAT and no "
                    + "BEGIN_DATA; export the measurements as CGATS text."
                    : " ends before BEGIN_DATA; it is cut off, export it again."));
        }
        if (samples.isEmpty()) {
            throw new CgatsException(file + (passed.isEmpty() ? " holds no samples; measure the card and export again."
                    : " holds no colours: it names " + passed.get(0) + "; export it with LAB_L LAB_A LAB_B, XYZ_X "
                            + "XYZ_Y XYZ_Z or reflectances."));
        }
        return List.copyOf(samples);
    }

    /** The words of the next line that has any; null at the end. */
    private List<Token> next() throws CgatsException {
        while (at < lines.size()) {
            List<Token> tokens = Token.of(lines.get(at).replace('\u001a', ' ').replace('\f', ' '), file, ++at);
            if (!tokens.isEmpty()) {
                return tokens;
            }
        }
        return null;
    }

    private void header(List<Token> line) throws CgatsException {
        if (line.get(0).is("NUMBER_OF_FIELDS")) {
            fields = whole(line, FIELDS_MOST, "fields");
        } else if (line.get(0).is("NUMBER_OF_SETS")) {
            sets = whole(line, SAMPLES_MOST, "samples");
        } else {
            viewing.note(line);
        }
    }

    private int whole(List<Token> line, int most, String what) throws CgatsException {
        String text = line.size() < 2 ? "" : line.get(1).text();
        if (!text.matches("\\d{1,9}")) {
            throw new CgatsException(file, at, line.get(0).text() + " is no whole number; export the file again.");
        }
        int number = Integer.parseInt(text);
        if (number > most) {
            throw new CgatsException(file, at, "there are " + number + " " + what + " and at most " + most
                    + " are read; export only the samples of the inks.");
        }
        return number;
    }

    /** Names of the fields, which may take several lines. */
    private List<String> format(List<Token> opening) throws CgatsException {
        int begun = at;
        List<String> names = new ArrayList<>();
        List<Token> line = opening.subList(1, opening.size());
        while (line != null) {
            for (Token token : line) {
                if (token.is("END_DATA_FORMAT")) {
                    if (fields >= 0 && fields != names.size()) {
                        throw new CgatsException(file, begun, "NUMBER_OF_FIELDS is " + fields + " and "
                                + names.size() + " fields are named; export the file again.");
                    }
                    fields = -1;
                    return names;
                }
                names.add(token.field());
                if (names.size() > FIELDS_MOST) {
                    throw new CgatsException(file, at, "more than " + FIELDS_MOST
                            + " fields are named; export only the colours.");
                }
            }
            line = next();
        }
        throw new CgatsException(file, begun,
                "BEGIN_DATA_FORMAT is never ended; the file is cut off, export it again.");
    }

    private record Row(List<Token> tokens, int line) {
    }

    private void data(CgatsFields named) throws CgatsException {
        int begun = at;
        int told = sets;
        sets = -1;
        List<Row> rows = new ArrayList<>();
        List<Token> line;
        while ((line = next()) != null && !line.get(0).is("END_DATA")) {
            if (line.size() != named.count()) {
                throw new CgatsException(file, at, "there are " + line.size() + " values and " + named.count()
                        + " fields are named; fill in what is missing, and put names with blanks in quotation marks.");
            }
            if (rows.size() + samples.size() >= SAMPLES_MOST) {
                throw new CgatsException(file, at, "there are more than " + SAMPLES_MOST
                        + " samples; export only those of the inks.");
            }
            rows.add(new Row(line, at));
        }
        if (line == null || told >= 0 && told != rows.size()) {
            throw new CgatsException(file, begun, (told < 0 ? "the data are never ended"
                    : "NUMBER_OF_SETS is " + told + " and " + rows.size() + " samples are there")
                    + "; the file is cut off or changed, export it again.");
        }
        if (!named.coloured()) {
            passed.add(named.listed());
            return;
        }
        collect(named, rows, begun);
    }

    private void collect(CgatsFields named, List<Row> rows, int begun) throws CgatsException {
        boolean plain = named.isPlain() && viewing.other().isEmpty();
        if (!plain && !named.spectral()) {
            throw new CgatsException(file, begun, "the colours are for " + viewing.other()
                    + "; export them for D50 and the 2 degree observer, or with reflectances.");
        }
        boolean percent = false;
        if (!plain) {
            for (Row row : rows) {
                percent |= named.percent(row.tokens(), row.line());
            }
        }
        for (Row row : rows) {
            Lab colour = plain ? named.plain(row.tokens(), row.line())
                    : named.ofSpectrum(row.tokens(), row.line(), percent);
            if (!(colour.l() >= 0 && colour.l() <= 100 && colour.chroma() <= CHROMA_MOST)) {
                throw new CgatsException(file, row.line(), String.format(Locale.ROOT,
                        "the colour L* %.1f a* %.1f b* %.1f is none that a print can have; measure the sample again or"
                        + " take its line out.", colour.l(), colour.a(), colour.b()));
            }
            samples.add(new MeasuredSample(named.name(row.tokens(), row.line()), colour, row.line()));
        }
    }

    static String shortened(String text) {
        return text.length() > SHOWN_MOST ? text.substring(0, SHOWN_MOST) + " ..." : text;
    }
}
