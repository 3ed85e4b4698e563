/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * How much larger a side would have to be for everything on it to print, and what to move to its other side.
 *
 * <p>Way in: {@link org.pollex.rules.crowd.Crowding}. Groups of marks come from {@code Groups}, what each needs from
 * {@code Needs}, the choice of what moves from {@code SplitSearch}. Does not belong here: findings and commands.
 */
package org.pollex.rules.crowd;
