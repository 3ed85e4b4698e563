/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: the editor of a design in the window: a page for each face of the item, and what is said about the file.
 *
 * <p>Way in: {@link org.pollex.editor.page.DesignEditor}, which the platform opens for {@code *.design}.
 *
 * <p>Does not belong: what a design is, prints or breaks.
 */
package org.pollex.editor.page;
