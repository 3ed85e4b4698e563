/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: the layers and marks of a side in their order.
 *
 * <p>Way in: {@link org.pollex.editor.outline.LayersPage}.
 *
 * <p>Does not belong: the drawing.
 */
package org.pollex.editor.outline;
