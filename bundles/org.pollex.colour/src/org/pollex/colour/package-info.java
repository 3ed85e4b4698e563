/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Colours as numbers: CIELAB for D50, the sRGB of screens and art files, XYZ between them, how different two colours
 * look and how well one reads on the other. Way in: {@link org.pollex.colour.Srgb} and
 * {@link org.pollex.colour.DeltaE}. What an ink or a material is and how films of ink mix does not belong in the
 * values here; nor do pictures.
 */
package org.pollex.colour;
