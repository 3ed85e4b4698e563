/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.testkit;

import java.awt.image.BufferedImage;

/**
 * How far two pictures of the same size differ.
 *
 * @param share    share of pixels with a channel off by more than the limit, 0 to 1
 * @param largest  largest difference of a channel, 0 to 255
 */
public record PictureDifference(double share, int largest) {

    /**
     * Compares pixel by pixel.
     *
     * @param limit  a channel may be off by this much
     */
    public static PictureDifference of(BufferedImage one, BufferedImage other, int limit) {
        int w = one.getWidth();
        int h = one.getHeight();
        if (other.getWidth() != w || other.getHeight() != h) {
            throw new IllegalArgumentException("The pictures measure " + w + " x " + h + " and " + other.getWidth()
                    + " x " + other.getHeight() + ".");
        }
        int[] a = one.getRGB(0, 0, w, h, null, 0, w);
        int[] b = other.getRGB(0, 0, w, h, null, 0, w);
        int off = 0;
        int largest = 0;
        for (int i = 0; i < a.length; i++) {
            int d = Math.max(Math.abs((a[i] >> 16 & 0xff) - (b[i] >> 16 & 0xff)),
                    Math.max(Math.abs((a[i] >> 8 & 0xff) - (b[i] >> 8 & 0xff)),
                            Math.abs((a[i] & 0xff) - (b[i] & 0xff))));
            largest = Math.max(largest, d);
            off += d > limit ? 1 : 0;
        }
        return new PictureDifference((double) off / a.length, largest);
    }
}
