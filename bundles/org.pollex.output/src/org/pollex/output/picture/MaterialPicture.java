/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.stream.IntStream;
import org.pollex.print.PrintedTones;
import org.pollex.print.Printed;
import org.pollex.print.item.ItemFace;

/**
 * What the finished item will look like: every face on its material in the colours the print is predicted to have, the
 * front on the left, the back, as seen from behind, on the right.
 *
 * <p>Colours in the middle of an area are those of {@link PrintedTones}; within 0.6 mm of the
 * edge they are shaded so that the item looks like a thing. A patterned material shows its pattern, and the films
 * of the print let it through as far as they do. What falls off
 * the item is not shown. The same design gives the same pixels. Needs no display.
 */
public final class MaterialPicture {

    /** Space round and between the faces, mm. */
    static final double MARGIN = 4;

    /** Height of the legend, mm. */
    private static final double LEGEND = 6;

    /** Most pixels of one picture; more would not fit into the memory of an ordinary call. */
    private static final double PIXELS_MAX = 60e6;

    private MaterialPicture() {
    }

    /**
     * Draws the picture.
     *
     * @throws IllegalArgumentException when the picture would have more than 60 million pixels
     */
    public static BufferedImage of(Printed printed, PictureOptions options) {
        List<ItemFace> faces = printed.item().faces();
        double wide = printed.item().width();
        double high = printed.item().height();
        double width = MARGIN + faces.size() * (wide + MARGIN);
        double height = high + 2 * MARGIN + (options.zones() ? LEGEND : 0);
        double scale = options.scale();
        if (width * scale * height * scale > PIXELS_MAX) {
            throw new IllegalArgumentException("The picture would have more than 60 million pixels; choose fewer "
                    + "dots an inch than " + options.dpi() + ".");
        }
        BufferedImage image = new BufferedImage((int) Math.ceil(width * scale), (int) Math.ceil(height * scale),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setColor(new Color(options.backdrop()));
            g.fillRect(0, 0, image.getWidth(), image.getHeight());
            FacePicture painter = new FacePicture(printed, options);
            double[] x = new double[faces.size()];
            for (int i = 0; i < x.length; i++) {
                x[i] = MARGIN + i * (wide + MARGIN) + wide / 2;
            }
            double y = MARGIN + high / 2;
            // The faces are painted beside the shadows, on pictures of their own.
            ForkJoinTask<List<FacePicture.Layer>> layers = ForkJoinPool.commonPool().submit(() -> IntStream
                    .range(0, x.length).mapToObj(i -> painter.layer(faces.get(i), x[i], y)).toList());
            for (int i = 0; i < x.length; i++) {
                painter.shadow(image, faces.get(i), x[i], y);
            }
            layers.join().forEach(layer -> layer.onto(image));
            if (options.zones()) {
                new ZoneLegend(options).paint(g, MARGIN, high + 2 * MARGIN, width - 2 * MARGIN);
            }
        } finally {
            g.dispose();
        }
        return image;
    }
}
