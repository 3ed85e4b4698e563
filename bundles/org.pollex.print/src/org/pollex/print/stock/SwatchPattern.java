/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import java.io.IOException;
import java.nio.file.Path;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.model.catalogue.Texture;

/**
 * A photograph of the stock, or the part of it that shows the stock, laid out again and again, every other time
 * mirrored so that no edge shows. Colours that are nearly alike are one, the mean of their light.
 */
final class SwatchPattern implements Pattern {

    private static final int CELLS = 1 << 15;
    private static final double[] LIGHT = new double[256];

    static {
        for (int i = 0; i < 256; i++) {
            LIGHT[i] = Srgb.decode(i / 255.0);
        }
    }

    private final int width;
    private final int height;
    private final double perMm;
    private final short[] numbers;
    private final Lab[] palette;

    private SwatchPattern(Photo.Part part, WhiteBalance balance, double perMm) {
        width = part.width();
        height = part.height();
        this.perMm = perMm;
        numbers = new short[width * height];
        int[] known = new int[CELLS];
        double[] sums = new double[4 * CELLS];
        int colours = 0;
        for (int i = 0; i < numbers.length; i++) {
            int rgb = balance.of(part.rgb()[i]);
            int key = rgb >> 9 & 0x7c00 | rgb >> 6 & 0x3e0 | rgb >> 3 & 0x1f;
            if (known[key] == 0) {
                known[key] = ++colours;
            }
            int number = known[key] - 1;
            numbers[i] = (short) number;
            sums[4 * number]++;
            for (int channel = 1; channel <= 3; channel++) {
                sums[4 * number + channel] += LIGHT[rgb >> 24 - 8 * channel & 0xff];
            }
        }
        palette = new Lab[colours];
        for (int i = 0; i < colours; i++) {
            double n = sums[4 * i];
            palette[i] = Lab.ofXyz(Srgb.xyz(sums[4 * i + 1] / n, sums[4 * i + 2] / n, sums[4 * i + 3] / n)
                    .fromD65ToD50());
        }
    }

    /**
     * Reads a picture.
     *
     * @param texture  its scale is what the width of the whole picture is on the material, mm
     * @throws IOException with one sentence that names the file and the cure
     */
    static SwatchPattern read(Path file, Texture texture) throws IOException {
        try (Photo photo = new Photo(file, texture.getScale())) {
            Photo.Part part = texture.getCrop() == null ? photo.all() : photo.part(texture.getCrop(), "crop");
            return new SwatchPattern(part, WhiteBalance.of(photo, texture.getGrey()), photo.perMm());
        }
    }

    @Override
    public Lab[] palette() {
        return palette;
    }

    @Override
    public int at(double x, double y, double step) {
        return numbers[folded(y * perMm, height) * width + folded(x * perMm, width)];
    }

    private static int folded(double at, int size) {
        int i = Math.floorMod((int) Math.floor(at), 2 * size);
        return i < size ? i : 2 * size - 1 - i;
    }
}
