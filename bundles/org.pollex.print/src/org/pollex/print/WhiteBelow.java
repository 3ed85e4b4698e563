/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

/** What an area of ink has to do with the white below. */
public enum WhiteBelow {
    /** Its colour needs white below it. */
    NEEDED,
    /** It is the white itself: no other ink lies on it. */
    ALONE,
    /** It prints on the bare stock: it is as good as black, or the method lays no white. */
    NONE
}
