/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.listing;

import java.util.ArrayList;
import java.util.List;

/** Rows of text in columns as wide as their longest cell. */
public final class Table {

    private final List<String[]> rows = new ArrayList<>();

    /** Adds a row. */
    public void row(String... cells) {
        rows.add(cells);
    }

    /** The rows as lines. */
    public List<String> lines() {
        int columns = rows.stream().mapToInt(row -> row.length).max().orElse(0);
        int[] widths = new int[columns];
        for (String[] row : rows) {
            for (int i = 0; i < row.length; i++) {
                widths[i] = Math.max(widths[i], row[i].codePointCount(0, row[i].length()));
            }
        }
        return rows.stream().map(row -> {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < row.length; i++) {
                line.append(row[i]).append(" ".repeat(widths[i] - row[i].codePointCount(0, row[i].length()) + 2));
            }
            return line.toString().stripTrailing();
        }).toList();
    }
}
