/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.report;

import org.pollex.output.report.Plain;
import org.pollex.print.wear.RegionWear;
import org.pollex.print.wear.WearForecast;
import org.pollex.print.wear.WearRates;

/** A forecast of wear as JSON: one object. */
public final class WearReport {

    private static final int FORMAT = 1;

    private WearReport() {
    }

    /**
     * The report as UTF-8.
     *
     * @param path        the design, as the user named it
     * @param calibrated  whether the rate comes from a worn sample
     */
    public static byte[] of(String path, double hours, String use, WearRates rates, boolean calibrated,
            WearForecast forecast) {
        return Plain.json(json -> {
            json.beginObject();
            json.name("format").value(FORMAT);
            json.name("path").value(path);
            json.name("use").value(use);
            Plain.number(json, "hours", hours);
            Plain.number(json, "rate", rates.rate());
            json.name("calibrated").value(calibrated);
            Plain.number(json, "materialFactor", rates.material());
            Plain.number(json, "lost", forecast.lost(hours));
            json.name("regions").beginArray();
            for (RegionWear each : forecast.after(hours)) {
                json.beginObject();
                json.name("side").value(each.side());
                json.name("ink").value(each.ink());
                Plain.number(json, "area", each.area());
                Plain.number(json, "film", each.film());
                Plain.number(json, "lost", each.lost());
                json.endObject();
            }
            json.endArray();
            json.name("note").value("A model: only its rate can be calibrated, by one worn sample.");
            json.endObject();
        });
    }
}
