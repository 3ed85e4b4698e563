/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.crowd;

/** Which detail of a group asks for the largest scale. */
public enum Detail {
    /** Nothing that was measured is near a limit. */
    NONE("detail", "simplify it"),
    /** The x-height of its smallest lettering. */
    LETTERING("lettering", "cut words"),
    /** The thinner lines of its ink. */
    LINES("line work", "simplify it or make its lines bolder"),
    /** The gaps between and inside its parts. */
    GAPS("gaps", "simplify it or open its gaps");

    private final String word;
    private final String cure;

    Detail(String word, String cure) {
        this.word = word;
        this.cure = cure;
    }

    /** What people call it. */
    public String word() {
        return word;
    }

    /** What to do about it in the art, as an order. */
    public String cure() {
        return cure;
    }
}
