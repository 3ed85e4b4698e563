/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.util.Locale;
import org.pollex.model.catalogue.Entry;

/** What people call an entry of a catalogue. */
public final class EntryNames {

    private EntryNames() {
    }

    /** Its name, or its id when it has none. */
    public static String of(Entry entry) {
        return entry.getName() == null || entry.getName().isBlank() ? entry.getId() : entry.getName();
    }

    /** The same as it begins a line, with a capital. */
    public static String title(Entry entry) {
        String name = of(entry);
        int first = name.offsetByCodePoints(0, 1);
        return name.substring(0, first).toUpperCase(Locale.ROOT) + name.substring(first);
    }
}
