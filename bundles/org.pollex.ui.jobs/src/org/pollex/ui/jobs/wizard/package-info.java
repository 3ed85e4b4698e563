/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: windows in which jobs and designs are made, and art is brought in.
 *
 * <p>Way in: {@link org.pollex.ui.jobs.wizard.Wizards}.
 *
 * <p>Does not belong: the list of jobs.
 */
package org.pollex.ui.jobs.wizard;
