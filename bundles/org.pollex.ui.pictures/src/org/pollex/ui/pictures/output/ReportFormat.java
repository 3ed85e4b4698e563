/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures.output;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** What a report of findings is written as. */
public enum ReportFormat {
    /** For people. */
    PAGE("A page to read and keep", "html"),
    /** The format of {@code check --json}. */
    JSON("JSON, for other programs", "json"),
    /** The format of {@code check --sarif}. */
    SARIF("SARIF 2.1.0, for review tools", "sarif");

    private final String words;
    private final String extension;

    ReportFormat(String words, String extension) {
        this.words = words;
        this.extension = extension;
    }

    /** As the user is asked. */
    public String words() {
        return words;
    }

    /** Of the file, without a dot. */
    public String extension() {
        return extension;
    }

    /** The format that a file is by its name. */
    static Optional<ReportFormat> of(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        for (ReportFormat each : values()) {
            if (name.endsWith("." + each.extension)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }
}
