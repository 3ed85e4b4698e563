/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.function.UnaryOperator;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.print.stock.Stock;

/**
 * A piece of the surface of a material, pattern and all, on which films are laid: bare, or all of it seen under a film.
 * What is seen is worked out once for each colour of the surface. Not safe for threads.
 */
public final class StockChip {

    private final List<Lab> palette;
    private final short[] numbers;
    private final int width;
    private final int height;

    /**
     * Looks at the surface, which takes a while when it is a photograph.
     *
     * @param x       left edge on the face, mm
     * @param y       upper edge on the face, mm
     * @param scale   pixels for a mm, above 0
     * @param width   pixels
     * @param height  pixels
     */
    public StockChip(Stock stock, double x, double y, double scale, int width, int height) {
        this.palette = stock.palette();
        this.numbers = stock.raster(x, y, 1 / scale, width, height, false);
        this.width = width;
        this.height = height;
    }

    /** All of it bare. */
    public BufferedImage bare() {
        return under(UnaryOperator.identity());
    }

    /** All of it under something that shows another colour over each of the surface. */
    public BufferedImage under(UnaryOperator<Lab> film) {
        int[] seen = new int[palette.size()];
        BufferedImage all = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < numbers.length; i++) {
            int number = numbers[i] & 0xffff;
            if (seen[number] == 0) {
                seen[number] = 0xff000000 | Srgb.of(film.apply(palette.get(number)));
            }
            all.setRGB(i % width, i / width, seen[number]);
        }
        return all;
    }
}
