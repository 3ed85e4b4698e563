/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import java.io.IOException;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.model.catalogue.GreyPatch;

/**
 * Takes the cast of the light and of the camera out of a photograph, and sets its exposure, by a grey that lies in it:
 * red, green and blue are each multiplied by one factor in linear light so that the mean of the grey becomes the
 * neutral grey it is known to be. That is the rule of coefficients of J. von Kries (1902), on the channels of the
 * picture.
 *
 * <p>Limits: light that is not even over the picture stays uneven, and what the camera clipped cannot be had back.
 */
final class WhiteBalance {

    /** Least mean of a channel of the grey, linear light: below it the factor would blow up noise. */
    private static final double LEAST = 0.004;
    /** Largest share of the grey that may be as bright as the picture can say; common practice, no source. */
    private static final double CLIPPED = 0.02;
    private static final int BRIGHTEST = 254;

    /** Leaves all colours alone. */
    static final WhiteBalance NONE = new WhiteBalance(1, 1, 1);

    private final int[][] curves = new int[3][256];

    private WhiteBalance(double red, double green, double blue) {
        double[] factors = {red, green, blue};
        for (int channel = 0; channel < 3; channel++) {
            for (int i = 0; i < 256; i++) {
                double light = Math.min(1, Srgb.decode(i / 255.0) * factors[channel]);
                curves[channel][i] = (int) Math.round(255 * Srgb.encode(light));
            }
        }
    }

    /** The balance that makes a patch of a photograph the grey it is; {@link #NONE} without a patch. */
    static WhiteBalance of(Photo photo, GreyPatch grey) throws IOException {
        if (grey == null) {
            return NONE;
        }
        if (!(grey.getLightness() > 0)) {
            throw photo.wrong("has a grey patch without a lightness; give it the L* that the grey is known to have.");
        }
        Photo.Part part = photo.part(grey, "grey patch");
        double[] sum = new double[3];
        int clipped = 0;
        for (int rgb : part.rgb()) {
            int brightest = 0;
            for (int channel = 0; channel < 3; channel++) {
                int value = rgb >> 16 - 8 * channel & 0xff;
                sum[channel] += Srgb.decode(value / 255.0);
                brightest = Math.max(brightest, value);
            }
            clipped += brightest >= BRIGHTEST ? 1 : 0;
        }
        int n = part.rgb().length;
        if (clipped > CLIPPED * n) {
            throw photo.wrong("is overexposed at its grey patch; expose it less, or choose a darker grey.");
        }
        double light = new Lab(grey.getLightness(), 0, 0).toXyz().y();
        for (int channel = 0; channel < 3; channel++) {
            if (!(sum[channel] / n >= LEAST)) {
                throw photo.wrong("is too dark at its grey patch to balance its colours by; expose it more, or choose "
                        + "a lighter grey.");
            }
            sum[channel] = light * n / sum[channel];
        }
        return new WhiteBalance(sum[0], sum[1], sum[2]);
    }

    /** A colour of the photograph as it is in truth, both 0xRRGGBB; what comes out brighter than white is cut there. */
    int of(int rgb) {
        return curves[0][rgb >> 16 & 0xff] << 16 | curves[1][rgb >> 8 & 0xff] << 8 | curves[2][rgb & 0xff];
    }
}
