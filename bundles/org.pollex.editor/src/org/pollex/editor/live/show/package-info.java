/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: draws what a gesture does to the print, over the art and in a line of numbers below it.
 *
 * <p>Way in: {@link org.pollex.editor.live.show.LiveFindings}, one for each page.
 *
 * <p>Does not belong: measuring.
 */
package org.pollex.editor.live.show;
