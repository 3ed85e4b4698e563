/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.locationtech.jts.geom.Coordinate;
import org.pollex.geometry.shape.Polygons;
import org.pollex.rules.CheckContext;
import org.pollex.rules.Contributions;
import org.pollex.rules.Finding;
import org.pollex.rules.FindingDraft;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Severity;
import org.pollex.rules.Suite;

/** Runs every case of the folder of cases: one file, one test. */
class PrintCasesTest {

    private static final Path CASES = Path.of("..", "org.pollex.cases", "print");
    private static Suite suite;

    @BeforeAll
    static void install() {
        suite = Suite.of(Contributions.fromClassPath(PrintCasesTest.class.getClassLoader()));
    }

    @Test
    void everythingInstalledIsSound() {
        assertEquals(List.of(), suite.problems());
        assertEquals(List.of(), suite.catalogues().problems());
    }

    @TestFactory
    List<DynamicTest> cases() throws Exception {
        try (Stream<Path> files = Files.walk(CASES)) {
            List<DynamicTest> tests = files.filter(file -> file.toString().endsWith(".txt")).sorted()
                    .map(file -> DynamicTest.dynamicTest(CASES.relativize(file).toString(), () -> run(file))).toList();
            assertTrue(tests.size() > 40, "only " + tests.size() + " cases found in " + CASES.toAbsolutePath());
            return tests;
        }
    }

    /** Every check has a case that finds something and one that finds nothing. */
    @Test
    void everyCheckHasCasesForAndAgainst() throws Exception {
        List<String> lacking = new ArrayList<>();
        try (Stream<Path> files = Files.walk(CASES)) {
            List<PrintCase> all = new ArrayList<>();
            for (Path file : files.filter(file -> file.toString().endsWith(".txt")).toList()) {
                all.add(PrintCase.read(file));
            }
            for (var entry : suite.checks()) {
                boolean found = all.stream().anyMatch(test -> test.expected().stream()
                        .anyMatch(expected -> expected.check().equals(entry.id())));
                boolean clean = all.stream().anyMatch(test -> test.checks().contains(entry.id())
                        && test.expected().stream().noneMatch(expected -> expected.check().equals(entry.id())));
                if (!found || !clean) {
                    lacking.add(entry.id());
                }
            }
        }
        assertEquals(List.of(), lacking);
    }

    private static void run(Path file) throws Exception {
        PrintCase test = PrintCase.read(file);
        CheckContext context = CheckContext.of(test.printed(suite), test.catalogues(suite));
        List<Finding> found = new ArrayList<>();
        for (String id : test.checks()) {
            PrintCase.check(suite, id).check(context, sink(id, found));
        }
        List<Finding> left = new ArrayList<>(found);
        for (PrintCase.Expected expected : test.expected()) {
            Finding match = left.stream().filter(finding -> fits(finding, expected)).findFirst().orElse(null);
            if (match == null) {
                Assertions.fail("expected " + expected.line() + "\nfound " + text(found));
            }
            left.remove(match);
        }
        assertTrue(left.isEmpty(), () -> "not expected: " + text(left));
        for (Finding finding : found) {
            assertTrue(finding.message().endsWith("."), finding.message());
            assertFalse(finding.message().contains("  "), finding.message());
            boolean measures = finding.measured().isPresent();
            assertTrue(!measures || finding.message().matches("(?s).*\\d.*"), finding.message());
        }
    }

    static FindingSink sink(String id, List<Finding> into) {
        return new FindingSink() {
            @Override
            public void add(Finding finding) {
                into.add(finding);
            }

            @Override
            public FindingDraft found(Severity severity, String kind) {
                return new FindingDraft(id, severity, kind, into::add);
            }
        };
    }

    private static boolean fits(Finding finding, PrintCase.Expected expected) {
        return finding.check().equals(expected.check()) && finding.severity().word().equals(expected.severity())
                && finding.kind().equals(expected.kind())
                && expected.facts().entrySet().stream().allMatch(fact -> holds(finding, fact.getKey(),
                        fact.getValue()));
    }

    private static boolean holds(Finding finding, String key, String value) {
        return switch (key) {
            case "measured" -> near(finding.measured().orElse(Double.NaN), Double.parseDouble(value));
            case "limit" -> near(finding.limit().orElse(Double.NaN), Double.parseDouble(value));
            case "unit" -> finding.unit().equals(value);
            case "side" -> finding.side().equals(value);
            case "region" -> finding.region().equals(value);
            case "fix" -> finding.fixes().contains(value);
            case "says" -> finding.message().contains(value);
            case "at" -> finding.where().distance(Polygons.factory().createPoint(new Coordinate(
                    Double.parseDouble(value.split(",")[0]), Double.parseDouble(value.split(",")[1])))) < 0.25;
            default -> throw new IllegalArgumentException(key);
        };
    }

    /** Within one per cent, or a micrometre. */
    private static boolean near(double value, double expected) {
        return Math.abs(value - expected) <= Math.max(0.001, 0.01 * Math.abs(expected));
    }

    private static String text(List<Finding> findings) {
        StringBuilder text = new StringBuilder();
        for (Finding f : findings) {
            text.append("\n  ").append(f.severity().word()).append(' ').append(f.check()).append(' ').append(f.kind())
                    .append(" measured=").append(f.measured()).append(" limit=").append(f.limit()).append(" region=")
                    .append(f.region()).append(" \"").append(f.message()).append("\" ")
                    .append(f.where().getEnvelopeInternal());
        }
        return text.length() == 0 ? "nothing" : text.toString();
    }
}
