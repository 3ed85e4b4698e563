/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
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
        InkFilm ours = InkFilm.of(ink);
        boolean plain = surface.palette().size() == 1;
        FilmModel model = plain ? FilmModel.spectral() : FilmModel.fast();
        Film film = plain ? ours.film() : ours.fast();
        StockChip chip = new StockChip(surface, -WIDTH / 2, -HEIGHT / 2, scale, width, height);
        BufferedImage picture = chip.bare();
        Graphics2D g = picture.createGraphics();
        int split = edge(SPLIT, scale);
        lay(g, chip.under(ground -> model.over(ground, List.of(film))), edge(RIM, scale), split, scale);
        lay(g, chip.under(ground -> model.over(ground, List.of(film.thick(THIN)))), split,
                edge(WIDTH - RIM, scale), scale);
        g.dispose();
        return picture;
    }

    /** The first pixel whose middle lies behind an edge. */
    private static int edge(double mm, double scale) {
        return (int) Math.ceil(mm * scale - 0.5);
    }

    private static void lay(Graphics2D g, BufferedImage seen, int left, int right, double scale) {
        g.setClip(left, edge(RIM, scale), right - left, edge(HEIGHT - RIM, scale) - edge(RIM, scale));
        g.drawImage(seen, 0, 0, null);
    }
}
