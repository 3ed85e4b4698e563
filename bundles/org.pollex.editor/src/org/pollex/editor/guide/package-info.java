/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: guides of a side, drawn over the item, and the gestures that make, move and remove them.
 *
 * <p>Way in: {@link org.pollex.editor.guide.Guides} of a page; {@link org.pollex.editor.guide.GuideDrag} turns the
 * pointer into its changes.
 *
 * <p>Does not belong: which lines a moved mark keeps to, which the page decides.
 */
package org.pollex.editor.guide;
