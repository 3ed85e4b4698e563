/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

/**
 * Bounds that keep hostile or broken art from eating memory and time.
 *
 * @param bytes     most bytes of a file
 * @param elements  most elements, {@code use} expanded
 * @param depth     deepest nesting
 * @param segments  most path segments after dashes and {@code use} are expanded
 * @param pixels    most pixels of an embedded picture
 * @param millis    longest time for one file
 */
public record ReadLimits(long bytes, int elements, int depth, int segments, long pixels, int millis) {

    /** What ordinary client art stays far below. */
    public static ReadLimits usual() {
        return new ReadLimits(16L << 20, 200_000, 200, 2_000_000, 25_000_000L, 10_000);
    }
}
