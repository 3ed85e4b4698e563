/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live.show;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.pollex.edit.Pose;
import org.pollex.editor.live.ThinPlace;

/**
 * Thin places of a mark drawn in the background as a picture, since stroking thousands of them takes longer than a step
 * of a gesture may. It moves with the mark, and is stretched and turned with it until the next one is there.
 *
 * @param image  of the lines, clear beside them; whoever shows it disposes it
 * @param pose   of the mark when it was drawn
 * @param zoom   pixels a mm when it was drawn
 * @param left   of the picture from the middle of the mark, pixels
 * @param top    of the picture from the middle of the mark, pixels
 */
record LinesPicture(Image image, Pose pose, double zoom, int left, int top) {

    /** Larger pictures cost more to show than lines do. */
    private static final double MOST_PIXELS = 600_000;
    private static final double CELL = 4;
    private static final int FLANK = 4;
    private static final int CORE = 2;

    /**
     * Draws the walls of all places, and their centre lines with no two points nearer than a cell of the screen.
     *
     * @param zoom  pixels a mm
     * @return nothing when there are no places, or when the picture would be too large
     */
    static Optional<LinesPicture> of(Device device, List<ThinPlace> places, Pose pose, double zoom) {
        if (places.isEmpty()) {
            return Optional.empty();
        }
        AffineTransform placing = AffineTransform.getScaleInstance(zoom, zoom);
        placing.rotate(Math.toRadians(pose.turn()));
        placing.scale(pose.mirror() ? -pose.scale() : pose.scale(), pose.scale());
        Path2D lines = new Path2D.Double();
        double[] at = new double[2];
        ThinPlace.Pen pen = (x, y, lifted) -> {
            at[0] = x;
            at[1] = y;
            placing.transform(at, 0, at, 0, 1);
            if (lifted) {
                lines.moveTo(at[0], at[1]);
            } else {
                lines.lineTo(at[0], at[1]);
            }
        };
        places.forEach(each -> each.draw(CELL / (zoom * pose.scale()), pen));
        Rectangle2D box = lines.getBounds2D();
        int left = (int) Math.floor(box.getMinX()) - FLANK;
        int top = (int) Math.floor(box.getMinY()) - FLANK;
        double width = Math.ceil(box.getMaxX()) + FLANK - left;
        double height = Math.ceil(box.getMaxY()) + FLANK - top;
        if (width * height > MOST_PIXELS) {
            return Optional.empty();
        }
        BufferedImage drawn = new BufferedImage((int) width, (int) height, BufferedImage.TYPE_INT_ARGB);
        Graphics2D graphics = drawn.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.translate(-left, -top);
        for (int pass = 0; pass < 2; pass++) {
            graphics.setColor(pass == 0 ? Color.WHITE : new Color(Tone.ERROR.red, Tone.ERROR.green, Tone.ERROR.blue));
            graphics.setStroke(new BasicStroke(pass == 0 ? FLANK : CORE, BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL));
            graphics.draw(lines);
        }
        graphics.dispose();
        return Optional.of(new LinesPicture(new Image(device, data(drawn)), pose, zoom, left, top));
    }

    private static ImageData data(BufferedImage drawn) {
        int[] pixels = ((DataBufferInt) drawn.getRaster().getDataBuffer()).getData();
        ImageData data = new ImageData(drawn.getWidth(), drawn.getHeight(), 24, new PaletteData(0xff0000, 0xff00,
                0xff));
        byte[] alpha = new byte[pixels.length];
        for (int row = 0; row < data.height; row++) {
            int to = row * data.bytesPerLine;
            for (int at = row * data.width; at < (row + 1) * data.width; at++) {
                data.data[to++] = (byte) (pixels[at] >> 16);
                data.data[to++] = (byte) (pixels[at] >> 8);
                data.data[to++] = (byte) pixels[at];
                alpha[at] = (byte) (pixels[at] >>> 24);
            }
        }
        data.alphaData = alpha;
        return data;
    }
}
