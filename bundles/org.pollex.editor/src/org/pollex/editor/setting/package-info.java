/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: what a user chose about working in drawings: steps, distances, units; kept as preferences.
 *
 * <p>Way in: {@link org.pollex.editor.setting.Amount}, {@link org.pollex.editor.setting.LengthUnit},
 * {@link org.pollex.editor.setting.LeastShown}. Asked each time they are used, so that a change counts at once.
 *
 * <p>Does not belong: limits of print methods, which are data of the catalogues.
 */
package org.pollex.editor.setting;
