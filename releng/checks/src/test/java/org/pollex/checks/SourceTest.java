/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

/** Does every file that people write keep the rules of form: length, header, package comment, nothing put off? */
class SourceTest {

    private static final int LONGEST_CLASS = 400;
    private static final int LONGEST_LINE = 120;
    private static final List<String> HEADER = List.of("/*", " * Copyright (c) 2026 The Pollex contributors.",
            " * This program and the accompanying materials are made available under the terms of the",
            " * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/",
            " * SPDX-License-Identifier: EPL-2.0", " */");
    // Put together, so that this file does not name what it forbids.
    private static final Pattern PUT_OFF = Pattern.compile("\\b(TO" + "DO|FIX" + "ME|XX" + "X)\\b|@Dis" + "abled|@Ign"
            + "ore\\b");

    private final Project project = Project.here();

    @Test
    void noClassIsTooLong() {
        List<String> wrong = new ArrayList<>();
        for (Path file : project.javaFiles()) {
            wrong.addAll(length(project.name(file), Project.lines(file).size()));
        }
        DependencyTest.none(wrong);
    }

    @Test
    void noLineIsTooLong() {
        List<String> wrong = new ArrayList<>();
        for (Path file : project.javaFiles()) {
            List<String> lines = Project.lines(file);
            for (int i = 0; i < lines.size(); i++) {
                if (lines.get(i).length() > LONGEST_LINE) {
                    wrong.add(project.name(file) + ":" + (i + 1) + " has " + lines.get(i).length()
                            + " characters; break it at " + LONGEST_LINE);
                }
            }
        }
        DependencyTest.none(wrong);
    }

    @Test
    void everyJavaFileHasTheHeader() {
        List<String> wrong = new ArrayList<>();
        for (Path file : project.javaFiles()) {
            if (!hasHeader(Project.lines(file))) {
                wrong.add(project.name(file) + " does not start with the header; copy it from another file");
            }
        }
        DependencyTest.none(wrong);
    }

    @Test
    void everyPackageSaysWhatItIsFor() {
        List<String> wrong = new ArrayList<>();
        for (Path file : project.files(name -> name.startsWith("bundles/") && name.contains("/src/")
                && name.endsWith(".java"))) {
            if (!Files.exists(file.resolveSibling("package-info.java"))) {
                wrong.add(project.name(file.getParent()) + " has no package-info.java; say there what the package is"
                        + " for, where to start, and what does not belong");
            }
        }
        DependencyTest.none(wrong.stream().distinct().toList());
    }

    @Test
    void nothingIsPutOff() {
        List<String> wrong = new ArrayList<>();
        List<Path> files = project.files(name -> name.matches("releng/[a-z]+")
                || name.matches(".*\\.(java|xml|MF|properties|md|product|target|bash|ecore)"));
        assertTrue(files.size() > 20, "the files of the project were not found below " + project.root());
        for (Path file : files) {
            List<String> lines = Project.lines(file);
            for (int i = 0; i < lines.size(); i++) {
                if (PUT_OFF.matcher(lines.get(i)).find()) {
                    wrong.add(project.name(file) + ":" + (i + 1) + " puts something off; do it now, or drop the mark");
                }
            }
        }
        DependencyTest.none(wrong);
    }

    @Test
    void theseRulesFindWhatTheyForbid() {
        assertEquals(1, length("A.java", LONGEST_CLASS + 1).size());
        assertEquals(0, length("A.java", LONGEST_CLASS).size());
        assertTrue(PUT_OFF.matcher("// TO" + "DO later").find());
        assertTrue(PUT_OFF.matcher("    @Dis" + "abled(\"slow\")").find());
        assertTrue(hasHeader(HEADER));
        assertEquals(false, hasHeader(Collections.nCopies(20, "package a;")));
    }

    private static List<String> length(String name, int lines) {
        return lines <= LONGEST_CLASS ? List.of()
                : List.of(name + " has " + lines + " lines; split it by subject, " + LONGEST_CLASS + " is the most");
    }

    private static boolean hasHeader(List<String> lines) {
        return lines.size() >= HEADER.size() && lines.subList(0, HEADER.size()).equals(HEADER);
    }
}
