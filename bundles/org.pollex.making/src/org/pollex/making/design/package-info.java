/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: makes and changes designs: a new design from art, art placed as large as it goes.
 *
 * <p>Way in: {@link org.pollex.making.design.DesignMaker} and {@link org.pollex.making.design.Placer}.
 *
 * <p>Does not belong: reading options, windows.
 */
package org.pollex.making.design;
