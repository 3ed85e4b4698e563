/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

/** Which points lie inside a path that crosses itself. */
public enum FillRule {
    /** Inside where the winding number is not zero. */
    NON_ZERO,
    /** Inside where the winding number is odd. */
    EVEN_ODD
}
