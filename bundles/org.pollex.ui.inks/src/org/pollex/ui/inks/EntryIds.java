/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.pollex.model.catalogue.Entry;

/** Ids for new entries of a catalogue. */
public final class EntryIds {

    private EntryIds() {
    }

    /**
     * An id that no entry has yet, made of the letters and digits of a name.
     *
     * @param otherwise  what it is made of when the name has none
     * @param taken      ids that are given already
     */
    public static String free(String name, String otherwise, Set<String> taken) {
        String bare = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String stem = bare.isEmpty() ? otherwise : bare;
        String id = stem;
        for (int i = 2; taken.contains(id); i++) {
            id = stem + "-" + i;
        }
        return id;
    }

    /** Ids of entries. */
    @SafeVarargs
    public static Set<String> of(Collection<? extends Entry>... entries) {
        Set<String> ids = new HashSet<>();
        List.of(entries).forEach(each -> each.forEach(entry -> ids.add(entry.getId())));
        return ids;
    }
}
