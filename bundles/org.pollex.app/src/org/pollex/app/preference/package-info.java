/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: the pages of preferences.
 *
 * <p>Way in: the extensions of this bundle.
 *
 * <p>Does not belong: what is kept by views for themselves.
 */
package org.pollex.app.preference;
