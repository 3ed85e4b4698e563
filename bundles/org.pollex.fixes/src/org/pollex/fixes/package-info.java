/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: what the suite can do about a finding, as commands over the design.
 *
 * <p>Way in: a finding and its design in, a command out.
 *
 * <p>Does not belong: anything with a window.
 */
package org.pollex.fixes;
