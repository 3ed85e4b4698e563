/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: what making needs from the outside: streams, folder, date, how a call ends, files that are written whole or
 * not at all.
 *
 * <p>Way in: {@link org.pollex.making.session.Session}.
 *
 * <p>Does not belong: designs and findings.
 */
package org.pollex.making.session;
