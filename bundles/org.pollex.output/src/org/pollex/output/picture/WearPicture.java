/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import java.awt.image.BufferedImage;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.pollex.colour.Srgb;
import org.pollex.model.LabColour;
import org.pollex.print.FilmColour;
import org.pollex.print.FilmThickness;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.item.ItemFace;
import org.pollex.print.wear.WearGrid;
import org.pollex.print.wear.WearRates;

/**
 * What the item will look like after hours of use: {@link MaterialPicture} with the print rubbed off where the model
 * says so, and the core of a coated material shining through. Where films of different thickness print, the mean of a
 * side counts. The same design gives the same pixels; more hours never bring ink back.
 */
public final class WearPicture {

    private static final Grain GRAIN = new Grain();

    private WearPicture() {
    }

    /**
     * Draws the picture.
     *
     * @param coat   thickness of the coat on a coated material, micrometres
     * @throws IllegalArgumentException when it would have more than 60 million pixels
     */
    public static BufferedImage of(Printed printed, PictureOptions options, WearRates rates, double coat,
            double hours) {
        BufferedImage worn = MaterialPicture.of(printed, options);
        Printed bare = printed.with(printed.material(), printed.inks(), List.of());
        BufferedImage below = MaterialPicture.of(bare, options);
        List<ItemFace> faces = printed.item().faces();
        for (int i = 0; i < faces.size(); i++) {
            double x = MaterialPicture.MARGIN + i * (printed.item().width() + MaterialPicture.MARGIN)
                    + printed.item().width() / 2;
            rub(printed, faces.get(i), worn, below, options.scale(), x,
                    MaterialPicture.MARGIN + printed.item().height() / 2, rates, coat, hours);
        }
        return worn;
    }

    private static void rub(Printed printed, ItemFace face, BufferedImage worn, BufferedImage below, double scale,
            double middleX, double middleY, WearRates rates, double coat, double hours) {
        WearGrid grid = WearGrid.of(face);
        PrintedSide side = printed.side(face.name()).orElse(null);
        FilmThickness thickness = FilmThickness.of(printed);
        double film = side == null ? 0 : side.inks().stream().mapToDouble(thickness::of).average().orElse(0);
        LabColour core = printed.material().getCoreLab();
        int coreRgb = core == null ? 0 : Srgb.of(FilmColour.lab(core));
        Envelope box = face.area().getEnvelopeInternal();
        int left = (int) Math.floor((middleX + box.getMinX()) * scale);
        int right = (int) Math.ceil((middleX + box.getMaxX()) * scale);
        int top = (int) Math.floor((middleY + box.getMinY()) * scale);
        int bottom = (int) Math.ceil((middleY + box.getMaxY()) * scale);
        for (int row = Math.max(0, top); row < Math.min(bottom, worn.getHeight()); row++) {
            double y = (row + 0.5) / scale - middleY;
            for (int column = Math.max(0, left); column < Math.min(right, worn.getWidth()); column++) {
                double x = (column + 0.5) / scale - middleX;
                double field = grid.at(x, y);
                double keeps = GRAIN.at(x, y);
                boolean inked = worn.getRGB(column, row) != below.getRGB(column, row);
                if (inked && keeps >= rates.left(film, field, hours)) {
                    worn.setRGB(column, row, below.getRGB(column, row));
                }
                double covered = coat + (inked ? film : 0);
                if (core != null && keeps >= rates.left(covered, field, hours) && face.outline().contains(x, y)) {
                    worn.setRGB(column, row, coreRgb);
                }
            }
        }
    }
}
