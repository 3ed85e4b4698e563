/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.setting;

import org.pollex.rules.Severity;

/** How bad must a finding be to be marked in the drawing? */
public final class LeastShown {

    /** Key of the preference. */
    public static final String KEY = "live.least";
    /** What holds where nobody chose. */
    public static final Severity USUAL = Severity.WARNING;

    private LeastShown() {
    }

    /** The mildest severity that is marked. */
    public static Severity chosen() {
        String kept = Choices.get(KEY, USUAL.name());
        for (Severity each : Severity.values()) {
            if (each.name().equals(kept)) {
                return each;
            }
        }
        return USUAL;
    }

    /** Whether findings of a severity are marked. */
    public static boolean shows(Severity severity) {
        return severity.compareTo(chosen()) <= 0;
    }

    /** Chooses. */
    public static void choose(Severity least) {
        Choices.set(KEY, least.name());
    }
}
