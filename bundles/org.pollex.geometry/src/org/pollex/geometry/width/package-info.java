/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * How thin is an area, and how narrow are the gaps in it: the local width at every place of the boundary, grouped
 * into places with their kind, and parts too small to print.
 *
 * <p>Way in: {@link org.pollex.geometry.width.WidthField} for lines and gaps,
 * {@link org.pollex.geometry.width.SmallParts} for specks and pinholes by area.
 *
 * <p>Does not belong here: limits of print methods and what a finding means (rules), repair of art.
 * All lengths are millimetres.
 */
package org.pollex.geometry.width;
