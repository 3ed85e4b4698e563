/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: what a film of ink does to the ground it lies on: two fluxes of light in a scattering layer (Kubelka and
 * Munk), halftone tints and overprints.
 *
 * <p>Way in: {@link org.pollex.colour.film.FilmModel} from measured colours to predicted ones;
 * {@link org.pollex.colour.film.Tint} for halftones.
 *
 * <p>Does not belong: inks and materials of a catalogue, and texture.
 */
package org.pollex.colour.film;
