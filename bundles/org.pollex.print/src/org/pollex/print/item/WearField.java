/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.item;

/** How hard a face is worn at each place. */
@FunctionalInterface
public interface WearField {

    /** From 0 (never touched) to 1 (worn first), at a place in mm. */
    double at(double x, double y);
}
