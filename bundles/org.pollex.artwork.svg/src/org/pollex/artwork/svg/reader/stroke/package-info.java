/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Strokes as areas: a line of some width along a path, with caps, joins and dashes, turned to an outline that is filled
 * by non-zero winding. Way in: {@link org.pollex.artwork.svg.reader.stroke.Stroker}. Units are those of the path.
 */
package org.pollex.artwork.svg.reader.stroke;
