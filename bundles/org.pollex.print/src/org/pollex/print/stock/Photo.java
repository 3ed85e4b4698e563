/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.pollex.model.catalogue.PhotoArea;
import org.pollex.model.catalogue.PhotoUnit;

/**
 * A photograph in a file, of which only the parts that are asked for are read. Places count from the top left corner as
 * the file stores the picture: a camera's note to turn it is not followed. Every error is one sentence that names the
 * file and the cure.
 */
final class Photo implements AutoCloseable {

    private static final long PIXELS_MAX = 16_000_000;

    private final String name;
    private final ImageInputStream in;
    private final ImageReader reader;
    private final double perMm;
    private final int width;
    private final int height;

    /** Colours of a part of a photograph, 0xRRGGBB row by row. */
    record Part(int width, int height, int[] rgb) {
    }

    /** @param wide  what the width of the whole photograph is on the material, mm */
    Photo(Path file, double wide) throws IOException {
        name = "The swatch picture " + file.getFileName();
        if (!Files.isRegularFile(file)) {
            throw new IOException(name + " is missing beside its catalogue; put it back or give the material another "
                    + "texture.");
        }
        in = ImageIO.createImageInputStream(file.toFile());
        Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
        if (!readers.hasNext()) {
            in.close();
            throw new IOException(name + " is no picture that can be read; save it as PNG or JPEG.");
        }
        reader = readers.next();
        try {
            reader.setInput(in, true, true);
            width = reader.getWidth(0);
            height = reader.getHeight(0);
        } catch (IOException | RuntimeException e) {
            close();
            throw new IOException(name + " is damaged; save it anew as PNG or JPEG.", e);
        }
        perMm = width / wide;
    }

    /** Pixels of the photograph on a mm of the material. */
    double perMm() {
        return perMm;
    }

    /** All of it. */
    Part all() throws IOException {
        return read(new Rectangle(width, height), "");
    }

    /**
     * A part of it.
     *
     * @param what  what the part is called in an error
     */
    Part part(PhotoArea area, String what) throws IOException {
        double scale = area.getUnit() == PhotoUnit.MM ? perMm : 1;
        double left = Math.rint(area.getX() * scale);
        double top = Math.rint(area.getY() * scale);
        double right = Math.rint((area.getX() + area.getWidth()) * scale);
        double bottom = Math.rint((area.getY() + area.getHeight()) * scale);
        if (!(left >= 0 && top >= 0 && right <= width && bottom <= height && right > left && bottom > top)) {
            throw new IOException(name + " has " + width + " x " + height + " pixels, and its " + what
                    + " does not lie on it; correct the " + what + ".");
        }
        return read(new Rectangle((int) left, (int) top, (int) (right - left), (int) (bottom - top)), what);
    }

    private Part read(Rectangle box, String what) throws IOException {
        if ((long) box.width * box.height > PIXELS_MAX) {
            throw new IOException(what.isEmpty() ? name + " has more than 16 million pixels; scale it down or crop it."
                    : name + " has more than 16 million pixels in its " + what + "; make the " + what + " smaller.");
        }
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceRegion(box);
        try {
            BufferedImage image = reader.read(0, param);
            return new Part(box.width, box.height, image.getRGB(0, 0, box.width, box.height, null, 0, box.width));
        } catch (IOException | RuntimeException e) {
            throw new IOException(name + " is damaged; save it anew as PNG or JPEG.", e);
        }
    }

    /** The sentence of an error about a part. */
    IOException wrong(String what) {
        return new IOException(name + " " + what);
    }

    @Override
    public void close() throws IOException {
        reader.dispose();
        in.close();
    }
}
