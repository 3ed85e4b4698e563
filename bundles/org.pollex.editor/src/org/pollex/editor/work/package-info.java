/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: what happens with an open design out of sight: its history, its print and its checks in the background, how
 * single marks look, and a copy of unsaved work.
 *
 * <p>Way in: {@link org.pollex.editor.work.Session}.
 *
 * <p>Does not belong: widgets, parts, dialogs.
 */
package org.pollex.editor.work;
