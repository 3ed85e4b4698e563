/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: steps on jobs and designs that run in the background.
 *
 * <p>Way in: {@link org.pollex.ui.jobs.work.Work}.
 *
 * <p>Does not belong: widgets.
 */
package org.pollex.ui.jobs.work;
