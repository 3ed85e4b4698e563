/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Tests of sets of pixels.
 *
 * <p>Purpose: distances, discs and parts against their definitions. Way in:
 * {@link org.pollex.print.pixels.DistanceTest}. Does not belong here: what is read from pixels of art.
 */
package org.pollex.print.pixels;
