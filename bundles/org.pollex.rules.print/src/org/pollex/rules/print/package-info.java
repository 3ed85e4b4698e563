/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Checks that hold for any small print: detail against the limits of the print method, edge and wear of the item, inks,
 * contrast, size, and what of the art could not be honoured. One class a check, stateless; limits come from the print
 * method, thresholds from the settings of catalogues, none from code. Way in: the extensions in {@code plugin.xml}.
 *
 * <p>Does not belong here: what holds for one family only, and measures that checks share (those are in rules and
 * geometry).
 */
package org.pollex.rules.print;
