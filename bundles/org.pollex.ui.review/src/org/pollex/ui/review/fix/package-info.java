/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: remedies for findings where the platform offers them: on markers, for one or many.
 *
 * <p>Way in: {@link org.pollex.ui.review.fix.FindingResolutions}.
 *
 * <p>Does not belong: what a remedy does.
 */
package org.pollex.ui.review.fix;
