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
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which bundles may a bundle require, and does it stand behind the wall? Read from {@code allowed.txt} beside this
 * class; all names without the common prefix.
 */
final class DependencyTable {

    private record Row(boolean walled, List<String> allowed) {
    }

    private final Map<String, Row> rows = new LinkedHashMap<>();

    DependencyTable(String text) {
        for (String line : text.split("\n")) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            String[] parts = line.strip().split("\\s*[|:]\\s*", 2);
            List<String> allowed = parts[1].isBlank() ? List.of() : List.of(parts[1].strip().split("\\s+"));
            rows.put(parts[0], new Row(line.contains("|"), allowed));
        }
    }

    static DependencyTable ofTheProject() {
        try (InputStream in = DependencyTable.class.getResourceAsStream("allowed.txt")) {
            return new DependencyTable(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    boolean knows(String bundle) {
        return row(bundle).isPresent();
    }

    boolean walled(String bundle) {
        return row(bundle).map(Row::walled).orElse(false);
    }

    /** What a bundle may require, with everything that those may require in turn. */
    Set<String> allowed(String bundle) {
        Set<String> all = new TreeSet<>();
        collect(bundle, all);
        return all;
    }

    private void collect(String bundle, Set<String> all) {
        for (String next : row(bundle).map(Row::allowed).orElse(List.of())) {
            if (all.add(next)) {
                collect(next, all);
            }
        }
    }

    private Optional<Row> row(String bundle) {
        Row exact = rows.get(bundle);
        return Optional.ofNullable(exact != null || !bundle.startsWith("family.") ? exact : rows.get("family.*"));
    }
}
