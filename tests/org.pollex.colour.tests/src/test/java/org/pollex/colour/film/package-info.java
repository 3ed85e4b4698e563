/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: films, tints and overprints against published tables, measured prints and laws.
 *
 * <p>Way in: each class names its source.
 *
 * <p>Does not belong: inks and materials of a catalogue.
 */
package org.pollex.colour.film;
