/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: what several views and wizards share: pictures for the screen, the design at hand.
 *
 * <p>Way in: plain helpers, each used by more than one view.
 *
 * <p>Does not belong: a view, a wizard or an editor.
 */
package org.pollex.ui;
