/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: findings of one or many designs as a page to read and keep, and for other tools as JSON and SARIF 2.1.0.
 *
 * <p>Way in: {@link org.pollex.output.report.FindingsPage}, {@link org.pollex.output.report.JsonReport},
 * {@link org.pollex.output.report.SarifReport}.
 *
 * <p>Does not belong: finding them, and what a call of the command line alone needs.
 */
package org.pollex.output.report;
