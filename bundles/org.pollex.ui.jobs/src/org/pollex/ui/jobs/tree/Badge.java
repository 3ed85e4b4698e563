/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.tree;

/** A state worth a small picture on a line, the most pressing first. The line says it in words too. */
public enum Badge {
    /** It cannot be printed as it is, or cannot be read. */
    ERROR("error"),
    /** The day on which the items must be there has passed. */
    LATE("late"),
    /** The client wants changes. */
    SENT_BACK("sent-back"),
    /** Something may print badly. */
    WARNING("warning"),
    /** The day comes near. */
    SOON("soon"),
    /** It is no longer what was shown to the client. */
    CHANGED("changed"),
    /** It is approved and locked. */
    SIGNED("signed"),
    /** Nothing to tell. */
    NONE("");

    private final String icon;

    Badge(String icon) {
        this.icon = icon;
    }

    String icon() {
        return icon;
    }

    Badge or(Badge other) {
        return ordinal() <= other.ordinal() ? this : other;
    }
}
