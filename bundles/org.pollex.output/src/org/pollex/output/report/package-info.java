/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: findings as a page to read and keep.
 *
 * <p>Way in: {@link org.pollex.output.report.FindingsPage}.
 *
 * <p>Does not belong: formats for other tools; the command line writes those.
 */
package org.pollex.output.report;
