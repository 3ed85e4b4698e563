/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: what an art director does with a job: waive findings, send designs back, make revisions, sign them off.
 *
 * <p>Way in: {@link org.pollex.rules.review.JobReview}.
 *
 * <p>Does not belong: how it is shown, and what a finding is.
 */
package org.pollex.rules.review;
