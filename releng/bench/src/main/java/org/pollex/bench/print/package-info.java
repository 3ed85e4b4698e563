/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: how long pictures, rankings, re-toned art and forecasts of wear take.
 *
 * <p>Way in: {@link org.pollex.bench.print.PrintBench}.
 *
 * <p>Does not belong: geometry alone.
 */
package org.pollex.bench.print;
