/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Tests of what the bare item looks like.
 *
 * <p>Purpose: laws of patterns, and swatch pictures good and bad. Way in: {@link org.pollex.print.stock.StockTest}.
 * Does not belong here: the shipped materials, tested with their catalogue.
 */
package org.pollex.print.stock;
