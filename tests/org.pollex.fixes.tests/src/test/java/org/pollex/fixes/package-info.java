/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: remedies mend what they were asked for and can be taken back to the byte.
 *
 * <p>Way in: {@link org.pollex.fixes.RemediesTest}.
 *
 * <p>Does not belong: the checks themselves.
 */
package org.pollex.fixes;
