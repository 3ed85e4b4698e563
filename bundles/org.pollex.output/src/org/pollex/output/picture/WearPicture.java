/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.stream.IntStream;
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
 * side counts. The same design gives the same pixels; more hours never bring ink back. What does not depend on the
 * hours, the new print, the bare material and the wear field, is worked out once. Immutable, safe for threads.
 */
public final class WearPicture {

    private static final Grain GRAIN = new Grain();

    private record Face(ItemFace face, WearGrid grid, double film, double middleX) {
    }

    private final Printed printed;
    private final double scale;
    private final BufferedImage fresh;
    private final BufferedImage below;
    private final List<Face> faces = new ArrayList<>();

    /**
     * Works out what all hours share.
     *
     * @throws IllegalArgumentException when the picture would have more than 60 million pixels
     */
    public WearPicture(Printed printed, PictureOptions options) {
        this.printed = printed;
        scale = options.scale();
        ForkJoinTask<BufferedImage> bare = ForkJoinPool.commonPool().submit(() -> MaterialPicture.of(
                printed.with(printed.material(), printed.inks(), List.of()), options));
        fresh = MaterialPicture.of(printed, options);
        below = bare.join();
        FilmThickness thickness = FilmThickness.of(printed);
        List<ItemFace> all = printed.item().faces();
        for (int i = 0; i < all.size(); i++) {
            PrintedSide side = printed.side(all.get(i).name()).orElse(null);
            faces.add(new Face(all.get(i), WearGrid.of(all.get(i)), side == null ? 0
                    : side.inks().stream().mapToDouble(thickness::of).average().orElse(0), MaterialPicture.MARGIN
                            + i * (printed.item().width() + MaterialPicture.MARGIN) + printed.item().width() / 2));
        }
    }

    /**
     * Draws the picture.
     *
     * @param coat   thickness of the coat on a coated material, micrometres
     * @throws IllegalArgumentException when it would have more than 60 million pixels
     */
    public static BufferedImage of(Printed printed, PictureOptions options, WearRates rates, double coat,
            double hours) {
        return new WearPicture(printed, options).after(rates, coat, hours);
    }

    /**
     * The picture after some hours.
     *
     * @param coat   thickness of the coat on a coated material, micrometres
     */
    public BufferedImage after(WearRates rates, double coat, double hours) {
        BufferedImage worn = new BufferedImage(fresh.getWidth(), fresh.getHeight(), fresh.getType());
        worn.setData(fresh.getRaster());
        faces.forEach(each -> rub(each, worn, rates, coat, hours));
        return worn;
    }

    private void rub(Face on, BufferedImage worn, WearRates rates, double coat, double hours) {
        ItemFace face = on.face;
        double middleX = on.middleX;
        double middleY = MaterialPicture.MARGIN + printed.item().height() / 2;
        LabColour core = printed.material().getCoreLab();
        int coreRgb = core == null ? 0 : Srgb.of(FilmColour.lab(core));
        Envelope box = face.area().getEnvelopeInternal();
        int left = (int) Math.floor((middleX + box.getMinX()) * scale);
        int right = (int) Math.ceil((middleX + box.getMaxX()) * scale);
        int top = (int) Math.floor((middleY + box.getMinY()) * scale);
        int bottom = (int) Math.ceil((middleY + box.getMaxY()) * scale);
        IntStream.range(Math.max(0, top), Math.min(bottom, worn.getHeight())).parallel().forEach(row -> {
            double y = (row + 0.5) / scale - middleY;
            for (int column = Math.max(0, left); column < Math.min(right, worn.getWidth()); column++) {
                double x = (column + 0.5) / scale - middleX;
                double field = on.grid.at(x, y);
                double keeps = GRAIN.at(x, y);
                boolean inked = worn.getRGB(column, row) != below.getRGB(column, row);
                if (inked && keeps >= rates.left(on.film, field, hours)) {
                    worn.setRGB(column, row, below.getRGB(column, row));
                }
                double covered = coat + (inked ? on.film : 0);
                if (core != null && keeps >= rates.left(covered, field, hours) && face.outline().contains(x, y)) {
                    worn.setRGB(column, row, coreRgb);
                }
            }
        });
    }
}
