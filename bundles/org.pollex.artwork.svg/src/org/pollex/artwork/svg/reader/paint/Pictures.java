/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.FillRule;
import org.pollex.artwork.svg.reader.report.Notices;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.syntax.AspectRatio;
import org.pollex.artwork.svg.reader.syntax.ViewBox;
import org.pollex.artwork.svg.reader.tree.Node;

/** Pictures of pixels inside the file: PNG and JPEG. Their size is read from the header before a pixel is decoded. */
final class Pictures {

    private final Reading reading;

    Pictures(Reading reading) {
        this.reading = reading;
    }

    void paint(Node node, Style style, Frame frame) throws ArtException {
        String href = node.href();
        if (!style.visible() || href.isEmpty()) {
            return;
        }
        if (!href.startsWith("data:")) {
            reading.notices().refused("image href", node.label(),
                    "a picture in another file is not opened; embed it in the art");
            return;
        }
        int comma = href.indexOf(',');
        String kind = href.substring(5, Math.max(5, comma)).toLowerCase(Locale.ROOT);
        boolean png = kind.startsWith("image/png");
        boolean jpeg = kind.startsWith("image/jpeg") || kind.startsWith("image/jpg");
        if (!png && !jpeg || !kind.endsWith(";base64")) {
            reading.notices().unsupported("image href", node.label(), "a picture of the kind \"" + Notices.cut(kind)
                    + "\" is not drawn; embed it as PNG or JPEG");
            return;
        }
        Optional<BufferedImage> image = decode(href.substring(comma + 1), png ? "png" : "jpeg", node);
        if (image.isPresent()) {
            place(image.get(), node, style, frame);
        }
    }

    private Optional<BufferedImage> decode(String text, String format, Node node) throws ArtException {
        ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
        try {
            byte[] bytes = Base64.getMimeDecoder().decode(text.contains("%") ? text.replaceAll("%[0-9a-fA-F]{2}", "")
                    : text);
            reader.setInput(new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes)), true, true);
            reading.budget().pixels((long) reader.getWidth(0) * reader.getHeight(0));
            return Optional.of(reader.read(0));
        } catch (IOException | RuntimeException e) {
            reading.notices().unsupported("image", node.label(),
                    "the picture is damaged or of an unusual kind and is not drawn; embed it again as PNG");
            return Optional.empty();
        } finally {
            reader.dispose();
        }
    }

    private void place(BufferedImage image, Node node, Style style, Frame frame) throws ArtException {
        int w = image.getWidth();
        int h = image.getHeight();
        double width = frame.x(style, node, "width", -1);
        double height = frame.y(style, node, "height", -1);
        if (width < 0 && height < 0) {
            width = w;
            height = h;
        } else if (width < 0) {
            width = height * w / h;
        } else if (height < 0) {
            height = width * h / w;
        }
        if (!(width > 0) || !(height > 0)) {
            return;
        }
        Rectangle2D port = new Rectangle2D.Double(frame.x(style, node, "x", 0), frame.y(style, node, "y", 0), width,
                height);
        AffineTransform fit = AspectRatio.parse(node.attribute("preserveAspectRatio")).fit(new ViewBox(0, 0, w, h),
                port.getX(), port.getY(), width, height);
        Rectangle2D area = fit.createTransformedShape(new Rectangle2D.Double(0, 0, w, h)).getBounds2D()
                .createIntersection(port);
        if (area.isEmpty()) {
            return;
        }
        int[] pixels = image.getRGB(0, 0, w, h, null, 0, w);
        AffineTransform all = new AffineTransform(frame.ctm());
        all.concatenate(fit);
        double[] m = new double[6];
        all.getMatrix(m);
        ArtPaint paint = new ArtPaint.Raster(mean(pixels), 1, w, h, pixels,
                List.of(m[0], m[1], m[2], m[3], m[4], m[5]));
        reading.output().add(frame.prefix() + node.label(), area, FillRule.NON_ZERO, frame.ctm(), paint,
                frame.clips(), false);
    }

    /** Mean colour, each pixel counting as much as it covers. */
    private static int mean(int[] pixels) {
        double red = 0;
        double green = 0;
        double blue = 0;
        double sum = 0;
        for (int p : pixels) {
            int a = p >>> 24;
            red += a * (p >> 16 & 255);
            green += a * (p >> 8 & 255);
            blue += a * (p & 255);
            sum += a;
        }
        return sum == 0 ? 0xffffff : (int) Math.round(red / sum) << 16 | (int) Math.round(green / sum) << 8
                | (int) Math.round(blue / sum);
    }
}
