/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pollex.rules.Severity;

/**
 * The errors of a job that nobody settled, as they are told to somebody who is about to sign.
 *
 * @param errors  in the order of the review
 */
record OpenErrors(List<Entry> errors) {

    private static final int NAMED = 4;

    static OpenErrors of(Queue unsettled) {
        List<Entry> errors = new ArrayList<>();
        for (int i = 0; i < unsettled.size(); i++) {
            if (unsettled.get(i).finding().severity() == Severity.ERROR) {
                errors.add(unsettled.get(i));
            }
        }
        return new OpenErrors(List.copyOf(errors));
    }

    /** The plain question. */
    String question() {
        return (errors.isEmpty() ? "No error is open. Sign the newest revision off?" : errors.size()
                + (errors.size() == 1 ? " error is" : " errors are") + " not settled. Sign the newest revision off "
                + "with " + (errors.size() == 1 ? "it" : "them") + "?") + " Its designs are locked then.";
    }

    /** The first few kinds, a line each with how many are alike, and how many errors are left. */
    List<String> lines() {
        Map<String, List<Entry>> alike = new LinkedHashMap<>();
        for (Entry each : errors) {
            alike.computeIfAbsent(String.join("\n", each.file().getFullPath().toString(), each.finding().side(),
                    each.finding().check(), each.finding().kind()), key -> new ArrayList<>()).add(each);
        }
        List<String> lines = new ArrayList<>();
        int left = errors.size();
        for (List<Entry> each : alike.values()) {
            if (lines.size() < NAMED) {
                lines.add("\u2022 " + line(each));
                left -= each.size();
            }
        }
        if (left > 0) {
            lines.add("and " + left + " more.");
        }
        return lines;
    }

    private static String line(List<Entry> alike) {
        Entry first = alike.get(0);
        return first.file().getName() + (first.finding().side().isEmpty() ? "" : ", " + first.finding().side()) + ": "
                + first.finding().message() + (alike.size() == 1 ? "" : " (and " + (alike.size() - 1) + " like it)");
    }
}
