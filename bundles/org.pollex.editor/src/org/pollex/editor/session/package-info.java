/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: one design that is being worked on, as the rest of the window sees it.
 *
 * <p>Way in: the editor adapts to {@link org.pollex.editor.session.DesignSession} and to
 * {@link org.pollex.editor.session.DesignPages}.
 *
 * <p>Does not belong: figures, parts, policies.
 */
package org.pollex.editor.session;
