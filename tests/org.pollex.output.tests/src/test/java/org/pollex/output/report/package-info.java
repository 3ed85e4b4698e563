/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: the page of findings holds what was found, with its pictures, and nothing that could run.
 *
 * <p>Way in: {@link org.pollex.output.report.FindingsPageTest}.
 *
 * <p>Does not belong: the reports of the command line.
 */
package org.pollex.output.report;
