/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: the steps of a review, on a job in a folder of the test.
 *
 * <p>Way in: {@link org.pollex.rules.review.JobReviewTest}.
 *
 * <p>Does not belong: fingerprints of findings; they are tested with the waivers.
 */
package org.pollex.rules.review;
