/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Picks: flat rounded triangles that are played with their tip. The bundle holds what the suite does not know about
 * them by itself: the outline from dimensions, the zones of both faces, the wear field, and the catalogue of sizes and
 * materials. Way in: the extensions in {@code plugin.xml}, which name {@link org.pollex.family.pick.PickBuilder} and
 * {@code catalogue/pick.catalogue}.
 *
 * <p>Does not belong here: checks that hold for other small things, print methods and inks.
 */
package org.pollex.family.pick;
