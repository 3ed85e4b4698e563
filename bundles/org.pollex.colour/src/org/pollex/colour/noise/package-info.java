/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * How busy a surface is.
 *
 * <p>Purpose: the noise of a surface at the width of a stroke, and the signal of an ink against it. Way in:
 * {@link org.pollex.colour.noise.Windows}. Does not belong here: where the surface comes from.
 */
package org.pollex.colour.noise;
