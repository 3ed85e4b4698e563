/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.checks;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

/**
 * Are the versions of libraries the same wherever they are named? A target definition cannot use properties, so the
 * versions that tests on the plain JVM use too are named twice: in {@code .mvn/maven.config} and in the target.
 */
class VersionsTest {

    private static final Pattern DEPENDENCY = Pattern.compile(
            "<artifactId>([^<$]+)</artifactId>\\s*<version>([^<]+)</version>");

    private final Project project = Project.here();

    @Test
    void pomsAndTargetAgree() {
        Map<String, String> target = new HashMap<>();
        for (String[] found : find(text("releng/org.pollex.target/org.pollex.target.target"))) {
            target.put(found[0], found[1]);
        }
        Map<String, String> properties = new HashMap<>();
        for (String line : text(".mvn/maven.config").split("\n")) {
            if (line.startsWith("-D")) {
                properties.put(line.substring(2, line.indexOf('=')), line.substring(line.indexOf('=') + 1));
            }
        }
        List<String> wrong = new ArrayList<>();
        Set<String> compared = new HashSet<>();
        for (Path pom : project.files(name -> name.endsWith("pom.xml"))) {
            for (String[] found : find(String.join("\n", Project.lines(pom)))) {
                String version = found[1].startsWith("${")
                        ? properties.getOrDefault(found[1].substring(2, found[1].length() - 1), found[1]) : found[1];
                String wanted = target.get(found[0]);
                if (wanted != null && !version.startsWith("${") && !found[0].startsWith("org.pollex")) {
                    compared.add(found[0]);
                    if (!wanted.equals(version)) {
                        wrong.add(project.name(pom) + " takes " + found[0] + " " + version + ", the target " + wanted
                                + "; make .mvn/maven.config and the target agree");
                    }
                }
            }
        }
        assertTrue(compared.size() >= 10, "only these were found in both: " + compared);
        DependencyTest.none(wrong);
    }

    private String text(String name) {
        return String.join("\n", Project.lines(project.root().resolve(name)));
    }

    private static List<String[]> find(String text) {
        List<String[]> all = new ArrayList<>();
        Matcher matcher = DEPENDENCY.matcher(text);
        while (matcher.find()) {
            all.add(new String[] {matcher.group(1), matcher.group(2)});
        }
        return all;
    }
}
