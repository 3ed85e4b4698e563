/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: the one class of this package that the platform no longer has and GEF still calls.
 *
 * <p>Way in: none; only GEF's own classes come here.
 *
 * <p>Does not belong: anything that Pollex itself would use.
 */
package org.eclipse.jface.util;
