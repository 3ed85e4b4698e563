/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.session;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Which known ids a misspelt one may have meant. */
public final class Near {

    private static final int MOST = 3;

    private Near() {
    }

    /** The ids nearest to a text, best first, at most three; none when nothing comes near. */
    public static List<String> to(String text, Collection<String> ids) {
        String low = text.toLowerCase(Locale.ROOT);
        int far = Math.max(2, low.length() / 2);
        return ids.stream().filter(id -> id.contains(low) && low.length() > 1 || distance(low, id) <= far)
                .sorted(Comparator.comparingInt((String id) -> distance(low, id)).thenComparing(id -> id))
                .limit(MOST).toList();
    }

    /** Fewest letters to put in, take out or change (V. I. Levenshtein, 1966). */
    static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }

    /** The end of a sentence about an unknown id: what it may have meant, and where to look. */
    public static String hint(String text, Collection<String> ids, String listWord) {
        List<String> near = to(text, ids);
        String all = "see \"list " + listWord + "\" for all";
        return near.isEmpty() ? all : "did you mean " + String.join(" or ", near) + "? Else " + all;
    }
}
