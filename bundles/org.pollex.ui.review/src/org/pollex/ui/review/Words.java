/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review;

import java.util.Locale;
import java.util.OptionalDouble;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;

/** What is said of findings. */
public final class Words {

    private Words() {
    }

    /** A severity in the middle of a sentence. */
    public static String of(Severity severity) {
        return switch (severity) {
            case ERROR -> "error";
            case WARNING -> "warning";
            default -> "note";
        };
    }

    /** A severity at the start of a sentence. */
    public static String title(Severity severity) {
        String word = of(severity);
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    /** A value with its unit, in short; empty without a value. */
    public static String number(OptionalDouble value, String unit) {
        return value.isEmpty() ? "" : String.format(Locale.ROOT, "%.2f %s", value.getAsDouble(), switch (unit) {
            case "CIEDE2000" -> "\u0394E";
            // goes from -1 to 1 and is told in the sentence
            case "polarity" -> "";
            default -> unit;
        }).strip();
    }

    /** What was measured against which limit; empty without both. */
    public static String measured(Finding finding) {
        return finding.measured().isEmpty() || finding.limit().isEmpty() ? "" : "Measured "
                + number(finding.measured(), finding.unit()) + ", limit " + number(finding.limit(), finding.unit());
    }
}
