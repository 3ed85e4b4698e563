/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Rows of a comma separated table beside the tests, its heading left out. */
final class Table {

    private Table() {
    }

    static List<String[]> rows(String name) {
        try (InputStream in = Table.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1)
                    .filter(line -> !line.isBlank()).map(line -> line.split(",")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Lab lab(String[] row, int at) {
        return new Lab(number(row, at), number(row, at + 1), number(row, at + 2));
    }

    static double number(String[] row, int at) {
        return Double.parseDouble(row[at]);
    }
}
