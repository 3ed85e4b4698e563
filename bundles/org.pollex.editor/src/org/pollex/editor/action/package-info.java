/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: what menus, keys, toolbar and dropped files do in the editor.
 *
 * <p>Way in: {@link org.pollex.editor.action.Acts}.
 *
 * <p>Does not belong: changes of the model by other means than commands.
 */
package org.pollex.editor.action;
