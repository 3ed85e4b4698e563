/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: one face of the item with its marks: viewer, rulers, zoom, and the scene its parts ask.
 *
 * <p>Way in: {@link org.pollex.editor.side.SidePage}.
 *
 * <p>Does not belong: files, tabs, and what is drawn while a gesture lasts.
 */
package org.pollex.editor.side;
