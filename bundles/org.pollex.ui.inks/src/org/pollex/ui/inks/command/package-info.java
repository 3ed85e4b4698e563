/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/** Opens the studio's inks. Way in: {@link org.pollex.ui.inks.command.OpenInks}. The editor itself does not belong. */
package org.pollex.ui.inks.command;
