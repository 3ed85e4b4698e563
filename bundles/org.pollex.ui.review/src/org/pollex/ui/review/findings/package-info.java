/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: the findings of the design in front or of the saved designs that are selected, with a picture of each
 * place and what to do.
 *
 * <p>Way in: {@link org.pollex.ui.review.findings.FindingsView}.
 *
 * <p>Does not belong: the review of saved designs, with its decisions.
 */
package org.pollex.ui.review.findings;
