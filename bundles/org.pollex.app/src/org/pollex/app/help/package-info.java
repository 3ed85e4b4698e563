/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: pages of help, read from the bundle and made from what is installed.
 *
 * <p>Way in: {@link org.pollex.app.help.HelpView}.
 *
 * <p>Does not belong: what a page says about a check; the check says that itself.
 */
package org.pollex.app.help;
