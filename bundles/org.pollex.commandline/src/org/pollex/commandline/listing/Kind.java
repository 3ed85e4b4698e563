/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.listing;

/** What can be listed. */
public enum Kind {
    /** Kinds of items. */
    FAMILIES,
    /** Sizes of items with their zones. */
    PRODUCTS,
    /** What items are made of. */
    MATERIALS,
    /** Inks. */
    INKS,
    /** Ways of printing with their limits. */
    METHODS,
    /** Checks. */
    CHECKS
}
