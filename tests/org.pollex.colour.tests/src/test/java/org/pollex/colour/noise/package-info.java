/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Tests of the noise of surfaces.
 *
 * <p>Purpose: means and variances against closed forms. Way in: {@link org.pollex.colour.noise.WindowsTest}. Does not
 * belong here: materials and inks.
 */
package org.pollex.colour.noise;
