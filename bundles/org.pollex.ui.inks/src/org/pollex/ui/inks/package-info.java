/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The studio's own inks in the window: an editor on catalogue files that lists, adds, changes and removes inks and
 * shows what their films do on every material. Other entries of a catalogue pass through untouched.
 *
 * <p>Way in: {@link org.pollex.ui.inks.InkEditor}.
 *
 * <p>Does not belong: how colours are computed, and the inks of a design.
 */
package org.pollex.ui.inks;
