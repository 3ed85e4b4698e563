/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Which inks on which materials.
 *
 * <p>Purpose: hold one design against every ink and material of the catalogues and say which pairs read best, and why.
 * Way in: {@link org.pollex.rules.rank.Ranking}. Does not belong here: findings about a design as it is (the checks).
 */
package org.pollex.rules.rank;
