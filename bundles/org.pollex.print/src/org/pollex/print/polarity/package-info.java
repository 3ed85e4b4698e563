/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Purpose: does a print keep the order of light and dark that the art means, or does it read as a negative? Way in:
 * {@link org.pollex.print.polarity.MarkPolarity}. Does not belong: what to do about it, and what is bad enough to tell.
 */
package org.pollex.print.polarity;
