/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: finds the lines a mark snaps to while it is moved.
 *
 * <p>Way in: {@link org.pollex.editor.snap.Snapper}.
 *
 * <p>Does not belong: moving the mark; the editor asks and places.
 */
package org.pollex.editor.snap;
