/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Colours of measured samples out of CGATS text files, as measuring programs write them.
 *
 * <p>Way in: {@link org.pollex.colour.cgats.CgatsReader}.
 *
 * <p>Does not belong: what the samples are, such as inks of a catalogue; values that drive a printer or a screen.
 */
package org.pollex.colour.cgats;
