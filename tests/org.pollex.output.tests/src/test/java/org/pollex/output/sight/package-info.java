/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: sight against the standard's angles.
 *
 * <p>Way in: {@link org.pollex.output.sight.SightTest}.
 *
 * <p>Does not belong: pictures of designs.
 */
package org.pollex.output.sight;
