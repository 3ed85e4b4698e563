/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: what a gesture does to the print while it lasts, as numbers: no print is made for it.
 *
 * <p>Way in: {@link org.pollex.editor.live.MarkMeasure} for one mark, {@link org.pollex.editor.live.Readout} for a
 * side.
 *
 * <p>Does not belong: drawing, and anything of the window system.
 */
package org.pollex.editor.live;
