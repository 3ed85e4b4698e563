/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOInvalidTreeException;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** A picture as the bytes of a PNG file that states its resolution (pHYs) and that its colours are sRGB. */
public final class PngFile {

    private static final String FORMAT = "javax_imageio_png_1.0";

    private PngFile() {
    }

    /**
     * Writes the picture.
     *
     * @param dpi pixels an inch, above 0
     */
    public static byte[] bytes(BufferedImage image, int dpi) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            IIOMetadata data = writer.getDefaultImageMetadata(new ImageTypeSpecifier(image), null);
            IIOMetadataNode root = new IIOMetadataNode(FORMAT);
            String perMetre = Long.toString(Math.round(dpi / 0.0254));
            IIOMetadataNode size = new IIOMetadataNode("pHYs");
            size.setAttribute("pixelsPerUnitXAxis", perMetre);
            size.setAttribute("pixelsPerUnitYAxis", perMetre);
            size.setAttribute("unitSpecifier", "meter");
            root.appendChild(size);
            IIOMetadataNode colours = new IIOMetadataNode("sRGB");
            colours.setAttribute("renderingIntent", "Perceptual");
            root.appendChild(colours);
            data.mergeTree(FORMAT, root);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, data), null);
        } catch (IIOInvalidTreeException e) {
            throw new IllegalStateException("The PNG writer of this Java refuses a resolution.", e);
        } catch (IOException e) {
            throw new UncheckedIOException("A PNG could not be made in memory.", e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
