/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: makes the sibling of a design for another material, with light kept light and dark kept dark.
 *
 * <p>Way in: {@link org.pollex.making.retone.Retoner}.
 *
 * <p>Does not belong: how art is re-toned (print), reading options, windows.
 */
package org.pollex.making.retone;
