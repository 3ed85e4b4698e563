/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.checks;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.Manifest;

/** What does a bundle's manifest say, and where are its classes? */
record Bundle(Path folder) {

    static final String PREFIX = "org.pollex.";

    String id() {
        return folder.getFileName().toString();
    }

    /** The id without the prefix that all bundles of the suite share. */
    String shortId() {
        return id().substring(PREFIX.length());
    }

    /** The symbolic name in the manifest. */
    String symbolicName() {
        List<String> names = names("Bundle-SymbolicName");
        return names.isEmpty() ? "" : names.get(0);
    }

    List<String> requiredBundles() {
        return names("Require-Bundle");
    }

    List<String> importedPackages() {
        return names("Import-Package");
    }

    List<String> exportedPackages() {
        return names("Export-Package");
    }

    String header(String name) {
        try (InputStream in = Files.newInputStream(folder.resolve("META-INF/MANIFEST.MF"))) {
            Attributes headers = new Manifest(in).getMainAttributes();
            String value = headers.getValue(name);
            return value == null ? "" : value;
        } catch (IOException e) {
            throw new UncheckedIOException(folder + "/META-INF/MANIFEST.MF is not a manifest", e);
        }
    }

    /** The folder with the compiled classes. */
    Path classes() {
        return folder.resolve("target/classes");
    }

    private List<String> names(String header) {
        return clauses(header(header));
    }

    /** The first name of each clause; commas in quotes divide nothing. */
    static List<String> clauses(String value) {
        List<String> names = new ArrayList<>();
        StringBuilder clause = new StringBuilder();
        boolean quoted = false;
        for (char c : (value + ",").toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            }
            if (c == ',' && !quoted) {
                String name = clause.toString().split(";")[0].strip();
                if (!name.isEmpty()) {
                    names.add(name);
                }
                clause.setLength(0);
            } else {
                clause.append(c);
            }
        }
        return names;
    }
}
