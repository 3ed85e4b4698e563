/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

/** Ids of the remedies that findings may name and the suite can carry out. A family may name others of its own. */
public final class Fixes {

    /** Place the art as large as the safe zone allows at its turn. */
    public static final String PLACE_LARGEST = "place-largest";
    /** Place the art as large as the safe zone allows at the best turn. */
    public static final String BEST_TURN = "best-turn";
    /** Move the art into the safe zone. */
    public static final String MOVE_INTO_SAFE = "move-into-safe";
    /** Move marks to the other side. */
    public static final String MOVE_TO_OTHER_SIDE = "move-to-other-side";
    /** Move the marks that the check proposes to the other side, and place both sides as large as fits. */
    public static final String MOVE_PROPOSED = "move-proposed";
    /** Scale the mark up until the limit holds. */
    public static final String SCALE_UP = "scale-up";
    /** Assign the nearest ink of the catalogue. */
    public static final String NEAREST_INK = "nearest-ink";
    /** Drop parts too small to print. */
    public static final String DROP_SPECKS = "drop-specks";

    private Fixes() {
    }
}
