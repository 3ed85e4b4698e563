/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Exact outlines of items: closed paths of straight lines and circular arcs, with exact area, bounds and inset,
 * and the generators that make such outlines from a few dimensions.
 *
 * <p>Way in: {@link org.pollex.geometry.outline.Outlines} and
 * {@link org.pollex.geometry.outline.RoundedTriangle} make outlines, {@link org.pollex.geometry.outline.Outline}
 * answers questions about one and flattens it to a polygon.
 *
 * <p>Does not belong here: zones and their meaning (they are catalogue data), printed art.
 * All lengths are millimetres, x to the right, y down; angles are degrees clockwise on screen.
 */
package org.pollex.geometry.outline;
