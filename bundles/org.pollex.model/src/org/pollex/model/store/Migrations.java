/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.util.List;
import java.util.Map;
import org.pollex.model.store.StoreException.Reason;

/**
 * Brings an older file to the current format, one step a format. A new format adds one {@link Migration} at the end of
 * its kind's list and raises the number in {@link FileKind}; the lists are as long as the number.
 */
final class Migrations {

    private static final Map<FileKind, List<Migration>> STEPS = Map.of(
            FileKind.DESIGN, List.of(FormatZero::design),
            FileKind.JOB, List.of(FormatZero::job),
            FileKind.CATALOGUE, List.of(FormatZero::catalogue));

    private Migrations() {
    }

    /** Number of formats that can be carried on. */
    static int count(FileKind kind) {
        return STEPS.get(kind).size();
    }

    /**
     * Rewrites the elements to the current format.
     *
     * @return the format that the file was written in
     */
    static int apply(XmlElement root, String file, FileKind kind) throws StoreException {
        String written = root.attributes().getOrDefault("format", "0");
        if (!written.matches("\\d{1,9}")) {
            throw new StoreException(Reason.BAD_VALUE, file, "line " + root.line() + ": format is "
                    + Quoted.of(written) + " but must be a whole number; correct it.");
        }
        int format = Integer.parseInt(written);
        if (format > kind.format()) {
            throw new StoreException(Reason.NEWER, file, "was written by a newer Pollex (format " + format
                    + ", this one reads up to " + kind.format() + "); update Pollex to open it.");
        }
        List<Migration> steps = STEPS.get(kind);
        try {
            for (int step = format; step < steps.size(); step++) {
                steps.get(step).apply(root);
            }
        } catch (Migration.Stuck e) {
            throw new StoreException(Reason.BAD_VALUE, file, "line " + e.line() + ", " + e.getMessage()
                    + " (format " + format + ").", e);
        }
        root.attributes().put("format", Integer.toString(kind.format()));
        return format;
    }
}
