/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui;

import java.awt.image.BufferedImage;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;

/** Pictures computed without a display, as images of the window system. The caller disposes the image. */
public final class ScreenImages {

    private ScreenImages() {
    }

    /** An opaque image of a picture; may be called in any thread for the data. */
    public static ImageData data(BufferedImage picture) {
        int width = picture.getWidth();
        int height = picture.getHeight();
        ImageData data = new ImageData(width, height, 24, new PaletteData(0xff0000, 0xff00, 0xff));
        int[] row = new int[width];
        for (int y = 0; y < height; y++) {
            picture.getRGB(0, y, width, 1, row, 0, width);
            for (int x = 0; x < width; x++) {
                row[x] &= 0xffffff;
            }
            data.setPixels(0, y, width, row, 0);
        }
        return data;
    }

    /** An opaque image of a picture. */
    public static Image image(Device device, BufferedImage picture) {
        return new Image(device, data(picture));
    }

    /** A colour of the window as a number, for the backdrop of a picture. */
    public static int rgb(org.eclipse.swt.graphics.Color colour) {
        return colour.getRed() << 16 | colour.getGreen() << 8 | colour.getBlue();
    }
}
