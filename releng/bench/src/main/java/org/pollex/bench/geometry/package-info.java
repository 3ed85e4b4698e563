/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Measures of speed for geometry: lines and gaps, and largest placement, on real art.
 *
 * <p>Way in: {@link org.pollex.bench.geometry.WidthBench}, {@link org.pollex.bench.geometry.PlacementBench}.
 * Does not belong here: checks that answers are right, which are tests.
 */
package org.pollex.bench.geometry;
