/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: the list of jobs: what stands in their folders and how it fares.
 *
 * <p>Way in: {@link org.pollex.ui.jobs.tree.JobsView}.
 *
 * <p>Does not belong: making jobs and designs.
 */
package org.pollex.ui.jobs.tree;
