/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: designs opened, printed, checked and saved, each failure with the sentence that a user reads.
 *
 * <p>Way in: {@link org.pollex.making.desk.Desk}.
 *
 * <p>Does not belong: changing designs, reporting findings.
 */
package org.pollex.making.desk;
