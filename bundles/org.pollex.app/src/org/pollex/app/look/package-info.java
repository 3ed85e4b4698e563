/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: light and dark.
 *
 * <p>Way in: {@link org.pollex.app.look.AppearanceHandler}.
 *
 * <p>Does not belong: colours of what is printed.
 */
package org.pollex.app.look;
