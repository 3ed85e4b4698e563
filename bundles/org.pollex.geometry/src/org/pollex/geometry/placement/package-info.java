/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * How large fits: the largest copy of a piece of art inside a zone, at a given turn or at the best turn.
 *
 * <p>Way in: {@link org.pollex.geometry.placement.LargestPlacement}; the answer is a
 * {@link org.pollex.geometry.placement.Fit}.
 *
 * <p>Does not belong here: what the zone means, several pieces on a sheet (nesting), balance of the design.
 * All lengths are millimetres, x to the right, y down; turns are degrees clockwise on screen.
 */
package org.pollex.geometry.placement;
