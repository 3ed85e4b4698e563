/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/**
 * A photograph as it is shown: read smaller than it is when it is large, so that a camera's pixels do not fill the
 * memory.
 *
 * @param width    of the file, pixels
 * @param height   of the file, pixels
 * @param picture  at most {@value #LARGEST} pixels wide and high, as the file stores it: a camera's note to turn it is
 *                 not followed
 */
record PhotoFile(int width, int height, BufferedImage picture) {

    private static final int LARGEST = 1600;

    /** Reads a file; it is never written to. */
    static PhotoFile read(Path file) throws IOException {
        try (ImageInputStream in = ImageIO.createImageInputStream(file.toFile())) {
            Iterator<ImageReader> readers = in == null ? null : ImageIO.getImageReaders(in);
            if (readers == null || !readers.hasNext()) {
                throw new IOException("no picture");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                int width = reader.getWidth(0);
                int height = reader.getHeight(0);
                // twice as large as shown, so that leaving out pixels is not seen
                int step = Math.max(1, Math.max(width, height) / (2 * LARGEST));
                ImageReadParam param = reader.getDefaultReadParam();
                param.setSourceSubsampling(step, step, 0, 0);
                return new PhotoFile(width, height, smaller(reader.read(0, param)));
            } finally {
                reader.dispose();
            }
        }
    }

    private static BufferedImage smaller(BufferedImage read) {
        double scale = Math.min(1, LARGEST / (double) Math.max(read.getWidth(), read.getHeight()));
        int width = Math.max(1, (int) Math.round(read.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(read.getHeight() * scale));
        BufferedImage shown = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = shown.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, width, height);
        g.drawImage(read, 0, 0, width, height, null);
        g.dispose();
        return shown;
    }
}
