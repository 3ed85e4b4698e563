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
import org.pollex.colour.film.Film;
import org.pollex.colour.film.FilmModel;
import org.pollex.model.catalogue.Ink;
import org.pollex.print.InkFilm;
import org.pollex.print.stock.Stock;

/**
 * A chip of a material with an ink on it, true in colour and in the size of the pattern: on the left the film as it was
 * measured, on the right the same half as thick, bare material round both. A plain material is computed in 31 bands, a
 * patterned one in three ({@link org.pollex.print.Laid#quick}).
 */
public final class InkPicture {

    /** Width and height of the chip, mm. */
    public static final double WIDTH = 12;
    /** See {@link #WIDTH}. */
    public static final double HEIGHT = 8;

    private static final double RIM = 1;
    private static final double SPLIT = 7.5;
    private static final double THIN = 0.5;

    private InkPicture() {
    }

    /**
     * Draws a chip.
     *
     * @param surface  of the material, so that several pictures can share it
     * @param scale    pixels for a mm, above 0
     */
    public static BufferedImage of(Ink ink, Stock surface, double scale) {
        int width = (int) Math.round(WIDTH * scale);
        int height = (int) Math.round(HEIGHT * scale);
        List<Lab> palette = surface.palette();
        InkFilm ours = InkFilm.of(ink);
        boolean plain = palette.size() == 1;
        FilmModel model = plain ? FilmModel.spectral() : FilmModel.fast();
        Film film = plain ? ours.film() : ours.fast();
        int[] bare = colours(palette, UnaryOperator.identity());
        int[] full = colours(palette, ground -> model.over(ground, List.of(film)));
        int[] thin = colours(palette, ground -> model.over(ground, List.of(film.thick(THIN))));
        short[] numbers = surface.raster(-WIDTH / 2, -HEIGHT / 2, 1 / scale, width, height, false);
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            double v = (y + 0.5) / scale;
            for (int x = 0; x < width; x++) {
                double u = (x + 0.5) / scale;
                boolean inked = u > RIM && u < WIDTH - RIM && v > RIM && v < HEIGHT - RIM;
                int number = numbers[y * width + x] & 0xffff;
                picture.setRGB(x, y, (!inked ? bare : u < SPLIT ? full : thin)[number]);
            }
        }
        return picture;
    }

    private static int[] colours(List<Lab> palette, UnaryOperator<Lab> seen) {
        return palette.stream().mapToInt(ground -> Srgb.of(seen.apply(ground))).toArray();
    }
}
