/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: art and print on a grid of pixels; their parts, middle lines, distances, and their outline again. Way in:
 * {@link org.pollex.print.pixels.Labels}. Does not belong: what is light, what prints, what reads.
 */
package org.pollex.print.pixels;
