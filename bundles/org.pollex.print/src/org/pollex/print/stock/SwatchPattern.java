/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;

/** A photograph of the stock, laid out again and again, every other time mirrored so that no edge shows. */
final class SwatchPattern implements Pattern {

    private static final long PIXELS_MAX = 16_000_000;

    private final int width;
    private final int height;
    private final double perMm;
    private final short[] numbers;
    private final Lab[] palette;

    private SwatchPattern(BufferedImage image, double wide) {
        width = image.getWidth();
        height = image.getHeight();
        perMm = width / wide;
        numbers = new short[width * height];
        int[] known = new int[1 << 15];
        List<Lab> colours = new ArrayList<>();
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int rgb = image.getRGB(x, y);
                int key = rgb >> 9 & 0x7c00 | rgb >> 6 & 0x3e0 | rgb >> 3 & 0x1f;
                if (known[key] == 0) {
                    colours.add(Srgb.lab(rgb & 0xf8f8f8 | 0x040404));
                    known[key] = colours.size();
                }
                numbers[y * width + x] = (short) (known[key] - 1);
            }
        }
        palette = colours.toArray(Lab[]::new);
    }

    /**
     * Reads a picture.
     *
     * @param wide  what the width of the picture is on the material, mm
     * @throws IOException with one sentence that names the file and the cure
     */
    static SwatchPattern read(Path file, double wide) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new IOException("The swatch picture " + file.getFileName() + " is missing beside its catalogue; put "
                    + "it back or give the material another texture.");
        }
        BufferedImage image = ImageIO.read(file.toFile());
        if (image == null) {
            throw new IOException("The swatch picture " + file.getFileName() + " is no picture that can be read; save "
                    + "it as PNG or JPEG.");
        }
        if ((long) image.getWidth() * image.getHeight() > PIXELS_MAX) {
            throw new IOException("The swatch picture " + file.getFileName() + " has more than 16 million pixels; "
                    + "scale it down or crop it.");
        }
        return new SwatchPattern(image, wide);
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
