/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: makes and changes jobs: their folder, their file, the list of their designs, art brought in.
 *
 * <p>Way in: {@link org.pollex.making.job.JobMaker}.
 *
 * <p>Does not belong: revisions, waivers and signatures, which are {@code org.pollex.rules.review}.
 */
package org.pollex.making.job;
