/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.report;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.List;
import org.pollex.model.catalogue.Ink;
import org.pollex.output.report.Plain;
import org.pollex.rules.rank.Ranked;

/** A ranking of inks over materials as JSON: one object, its pairs best first. */
public final class RankReport {

    private static final int FORMAT = 1;

    private RankReport() {
    }

    /**
     * The report as UTF-8.
     *
     * @param path  the design, as the user named it
     */
    public static byte[] of(String path, List<Ranked> ranking) {
        return Plain.json(json -> {
            json.beginObject();
            json.name("format").value(FORMAT);
            json.name("path").value(path);
            json.name("ranking").beginArray();
            for (Ranked each : ranking) {
                pair(json, each);
            }
            json.endArray().endObject();
        });
    }

    private static void pair(JsonWriter json, Ranked each) throws IOException {
        json.beginObject();
        json.name("material").value(each.material().getId());
        json.name("inks").beginArray();
        for (Ink ink : each.inks()) {
            json.value(ink.getId());
        }
        json.endArray();
        Plain.number(json, "score", each.score());
        json.name("verdict").value(each.verdict().words());
        Plain.number(json, "deltaE", each.deltaE());
        Plain.number(json, "deltaL", each.deltaL());
        Plain.number(json, "ratio", each.ratio());
        if (each.legibility().isPresent()) {
            Plain.number(json, "legibility", each.legibility().getAsDouble());
        }
        json.name("own").value(each.own());
        json.name("reason").value(each.reason());
        json.endObject();
    }
}
