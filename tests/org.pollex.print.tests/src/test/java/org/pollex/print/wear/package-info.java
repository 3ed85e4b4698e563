/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Tests of the forecast of wear.
 *
 * <p>Purpose: Archard's law against worked values, and laws that hold for any forecast. Way in:
 * {@link org.pollex.print.wear.WearTest}. Does not belong here: the wear fields of families.
 */
package org.pollex.print.wear;
