/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.figure;

import java.util.List;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.Srgb;
import org.pollex.geometry.shape.PointInZone;
import org.pollex.model.catalogue.Material;
import org.pollex.print.SeenThrough;
import org.pollex.print.stock.Stock;

/**
 * The pattern of a material on a face as a picture, clear beside the face. Fine enough to judge the pattern by; the
 * edge stays that of the path drawn below it.
 *
 * @param material  the material, patterned
 * @param mirrored  whether the face is seen from behind
 * @param behind    what of the print on the other face shows through it
 */
public record Surface(Material material, boolean mirrored, List<SeenThrough> behind) {

    private static final double PER_MM = 14;

    private record Seen(PointInZone where, int[] colours) {
    }

    /** Whether it is the same pattern, whatever shows through it. */
    boolean samePattern(Surface other) {
        return material == other.material && mirrored == other.mirrored;
    }

    /** The picture of an area; its size is that of the box of the area. Takes up to a second. */
    ImageData picture(Geometry area) {
        Envelope box = area.getEnvelopeInternal();
        int width = Math.max(1, (int) Math.round(box.getWidth() * PER_MM));
        int height = Math.max(1, (int) Math.round(box.getHeight() * PER_MM));
        Stock stock = Stock.of(material);
        short[] numbers = stock.raster(box.getMinX(), box.getMinY(), 1 / PER_MM, width, height, mirrored);
        int[] colours = stock.palette().stream().mapToInt(Srgb::of).toArray();
        PointInZone inside = PointInZone.of(area);
        List<Seen> seen = behind.stream().map(each -> new Seen(PointInZone.of(each.area()),
                stock.palette().stream().mapToInt(colour -> Srgb.of(each.over(colour))).toArray())).toList();
        ImageData data = new ImageData(width, height, 24, new PaletteData(0xff0000, 0xff00, 0xff));
        byte[] alpha = new byte[width * height];
        for (int row = 0; row < height; row++) {
            for (int column = 0; column < width; column++) {
                int at = row * width + column;
                double x = box.getMinX() + (column + 0.5) / PER_MM;
                double y = box.getMinY() + (row + 0.5) / PER_MM;
                int[] there = colours;
                for (Seen each : seen) {
                    there = each.where().contains(x, y) ? each.colours() : there;
                }
                data.setPixel(column, row, there[numbers[at] & 0xffff]);
                alpha[at] = (byte) (inside.contains(x, y) ? 255 : 0);
            }
        }
        data.alphaData = alpha;
        return data;
    }
}
