/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: the review of saved designs: finding by finding, each enlarged beside the item at true size.
 *
 * <p>Way in: {@link org.pollex.ui.review.desk.ReviewDesk}.
 *
 * <p>Does not belong: the findings of a design that is being changed.
 */
package org.pollex.ui.review.desk;
