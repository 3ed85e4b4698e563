/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: the product: its application, its window and its perspectives.
 *
 * <p>Way in: {@link org.pollex.app.WorkbenchApplication}, which the platform starts.
 *
 * <p>Does not belong: views, editors, wizards and anything that knows about designs; they come from bundles of their
 * own and appear here by extension.
 */
package org.pollex.app;
