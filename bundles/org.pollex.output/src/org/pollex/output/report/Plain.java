/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.report;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.locationtech.jts.geom.Geometry;

/** How reports write numbers and places: plain decimals, never an exponent; mm to a tenth of a micrometre. */
public final class Plain {

    private Plain() {
    }

    /** A number with at most four decimals. */
    public static String number(double value) {
        return Decimal.of(value);
    }

    /** A place as well-known text. */
    public static String wkt(Geometry geometry) {
        return Wkt.of(geometry);
    }

    /** Writes a JSON document as UTF-8, indented, with a line break at its end. */
    public static byte[] json(Content content) {
        StringWriter text = new StringWriter();
        try (JsonWriter json = new JsonWriter(text)) {
            json.setIndent("  ");
            json.setHtmlSafe(false);
            content.write(json);
        } catch (IOException e) {
            throw new UncheckedIOException("A report could not be put together in memory.", e);
        }
        return text.append('\n').toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Writes a name and a number. */
    public static void number(JsonWriter json, String name, double value) throws IOException {
        json.name(name).jsonValue(number(value));
    }

    /** Writes a name and a text unless the text is empty. */
    public static void text(JsonWriter json, String name, String value) throws IOException {
        if (value != null && !value.isEmpty()) {
            json.name(name).value(value);
        }
    }

    /** What a JSON document holds. */
    @FunctionalInterface
    public interface Content {

        /** Writes it. */
        void write(JsonWriter json) throws IOException;
    }
}
