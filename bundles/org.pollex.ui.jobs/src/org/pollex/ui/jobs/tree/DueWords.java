/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.tree;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.time.temporal.ChronoUnit;

/** How long until a job is due, in words. */
record DueWords(String words, Badge badge) {

    /** A week leaves time for a proof and a print run; our choice. */
    private static final int SOON_DAYS = 7;

    static DueWords of(LocalDate due, LocalDate today) {
        long days = ChronoUnit.DAYS.between(today, due);
        if (days < 0) {
            return new DueWords(days == -1 ? "was due yesterday" : "was due " + -days + " days ago", Badge.LATE);
        }
        if (days <= SOON_DAYS) {
            return new DueWords(days == 0 ? "due today" : days == 1 ? "due tomorrow" : "due in " + days + " days",
                    Badge.SOON);
        }
        return new DueWords("due " + DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).format(due), Badge.NONE);
    }
}
