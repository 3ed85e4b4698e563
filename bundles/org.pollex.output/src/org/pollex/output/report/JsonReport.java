/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.report;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.List;
import org.pollex.rules.Finding;

/**
 * The report for other programs, format 1: {@code {"format":1,"designs":[...]}}. A field that has no meaning for a
 * finding is absent; a design that could not be read has {@code error} in place of {@code findings}.
 */
public final class JsonReport {

    private static final int FORMAT = 1;

    private JsonReport() {
    }

    /** The report as UTF-8. */
    public static byte[] of(List<CheckedDesign> designs) {
        return Plain.json(json -> {
            json.beginObject();
            json.name("format").value(FORMAT);
            json.name("designs").beginArray();
            for (CheckedDesign design : designs) {
                design(json, design);
            }
            json.endArray().endObject();
        });
    }

    private static void design(JsonWriter json, CheckedDesign design) throws IOException {
        json.beginObject();
        json.name("path").value(design.path());
        Plain.text(json, "product", design.product());
        Plain.text(json, "material", design.material());
        Plain.text(json, "method", design.method());
        if (design.readable()) {
            json.name("findings").beginArray();
            for (Finding finding : design.findings()) {
                finding(json, finding);
            }
            json.endArray();
        } else {
            json.name("error").value(design.error());
        }
        json.name("millis").value(design.millis());
        json.endObject();
    }

    private static void finding(JsonWriter json, Finding finding) throws IOException {
        json.beginObject();
        json.name("check").value(finding.check());
        Plain.text(json, "kind", finding.kind());
        json.name("severity").value(finding.severity().word());
        Plain.text(json, "side", finding.side());
        Plain.text(json, "region", finding.region());
        measures(json, finding);
        if (!finding.where().isEmpty()) {
            json.name("where").value(Plain.wkt(finding.where()));
        }
        json.name("message").value(finding.message());
        json.name("waived").value(finding.waived());
        json.name("fixes").beginArray();
        for (String fix : finding.fixes()) {
            json.value(fix);
        }
        json.endArray();
        json.endObject();
    }

    /** Measured value, limit and unit, as far as they have a meaning. */
    static void measures(JsonWriter json, Finding finding) throws IOException {
        if (finding.measured().isPresent()) {
            Plain.number(json, "measured", finding.measured().getAsDouble());
        }
        if (finding.limit().isPresent()) {
            Plain.number(json, "limit", finding.limit().getAsDouble());
        }
        Plain.text(json, "unit", finding.unit());
    }
}
