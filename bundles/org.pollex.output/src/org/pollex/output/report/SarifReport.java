/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.report;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.List;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;
import org.pollex.rules.Suite;

/**
 * The report as a SARIF 2.1.0 log (OASIS, Static Analysis Results Interchange Format): one run, a result for each
 * finding, a notification for each design that could not be read. Place, measured value, limit and unit, for which
 * SARIF has no fields of its own, are in the property bag of the result.
 */
public final class SarifReport {

    private static final String SCHEMA =
            "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    private final List<RuleText> rules;
    private final String version;

    /** A report that names these checks and this version of the suite. */
    public SarifReport(List<RuleText> rules, String version) {
        this.rules = List.copyOf(rules);
        this.version = version;
    }

    /**
     * The report with the checks of a suite, as UTF-8.
     *
     * @param version  of the program, such as 0.1.0
     */
    public static byte[] of(Suite suite, String version, List<CheckedDesign> designs) {
        return new SarifReport(suite.checks().stream().map(check -> new RuleText(check.id(), check.name(),
                check.description())).toList(), version).write(designs);
    }

    /** The report as UTF-8. */
    public byte[] write(List<CheckedDesign> designs) {
        return Plain.json(json -> {
            json.beginObject();
            json.name("$schema").value(SCHEMA);
            json.name("version").value("2.1.0");
            json.name("runs").beginArray().beginObject();
            tool(json);
            invocation(json, designs);
            json.name("results").beginArray();
            for (CheckedDesign design : designs) {
                for (Finding finding : design.findings()) {
                    result(json, design, finding);
                }
            }
            json.endArray();
            json.name("columnKind").value("utf16CodeUnits");
            json.endObject().endArray().endObject();
        });
    }

    private void tool(JsonWriter json) throws IOException {
        json.name("tool").beginObject().name("driver").beginObject();
        json.name("name").value("Pollex");
        json.name("version").value(version);
        json.name("rules").beginArray();
        for (RuleText rule : rules) {
            json.beginObject().name("id").value(rule.id());
            message(json, "shortDescription", rule.name());
            message(json, "fullDescription", rule.description());
            json.endObject();
        }
        json.endArray().endObject().endObject();
    }

    private static void invocation(JsonWriter json, List<CheckedDesign> designs) throws IOException {
        json.name("invocations").beginArray().beginObject();
        json.name("executionSuccessful").value(designs.stream().allMatch(CheckedDesign::readable));
        json.name("toolExecutionNotifications").beginArray();
        for (CheckedDesign design : designs) {
            if (!design.readable()) {
                json.beginObject().name("level").value("error");
                message(json, "message", design.error());
                locations(json, design.path(), "");
                json.endObject();
            }
        }
        json.endArray().endObject().endArray();
    }

    private void result(JsonWriter json, CheckedDesign design, Finding finding) throws IOException {
        json.beginObject();
        json.name("ruleId").value(finding.check());
        int index = index(finding.check());
        if (index >= 0) {
            json.name("ruleIndex").value(index);
        }
        json.name("level").value(finding.severity() == Severity.INFO ? "note" : finding.severity().word());
        message(json, "message", finding.message());
        locations(json, design.path(), finding.side());
        if (finding.waived()) {
            json.name("suppressions").beginArray().beginObject().name("kind").value("external");
            json.name("status").value("accepted").endObject().endArray();
        }
        json.name("properties").beginObject();
        Plain.text(json, "kind", finding.kind());
        Plain.text(json, "side", finding.side());
        Plain.text(json, "region", finding.region());
        JsonReport.measures(json, finding);
        if (!finding.where().isEmpty()) {
            json.name("where").value(Plain.wkt(finding.where()));
        }
        json.endObject().endObject();
    }

    private int index(String check) {
        for (int i = 0; i < rules.size(); i++) {
            if (rules.get(i).id().equals(check)) {
                return i;
            }
        }
        return -1;
    }

    private static void message(JsonWriter json, String name, String text) throws IOException {
        json.name(name).beginObject().name("text").value(text).endObject();
    }

    private static void locations(JsonWriter json, String path, String side) throws IOException {
        json.name("locations").beginArray().beginObject();
        json.name("physicalLocation").beginObject().name("artifactLocation").beginObject();
        json.name("uri").value(uri(path)).endObject().endObject();
        if (!side.isEmpty()) {
            json.name("logicalLocations").beginArray().beginObject();
            json.name("name").value(side).name("kind").value("element").endObject().endArray();
        }
        json.endObject().endArray();
    }

    /** A path as a URI reference; a relative one stays relative, with {@code ./} where its first part holds a colon. */
    public static String uri(String path) {
        try {
            if (path.startsWith("/")) {
                return new URI("file", "", path, null).toASCIIString();
            }
            return new URI(null, null, path.indexOf(':') >= 0 ? "./" + path : path, null).toASCIIString();
        } catch (URISyntaxException e) {
            throw new IllegalArgumentException("The path " + path + " cannot be written as a URI.", e);
        }
    }
}
