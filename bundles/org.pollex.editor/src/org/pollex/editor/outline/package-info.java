/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: sides, layers and marks of the design as a tree, in the platform's outline view.
 *
 * <p>Way in: {@link org.pollex.editor.outline.LayersPage}, which the editor hands to the view.
 *
 * <p>Does not belong: changes of the model, which are commands, and the drawing.
 */
package org.pollex.editor.outline;
