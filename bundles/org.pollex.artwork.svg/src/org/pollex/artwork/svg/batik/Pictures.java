/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Iterator;
import java.util.List;
import java.util.ListIterator;

import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;

import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.svg.gate.GateReport;
import org.pollex.artwork.svg.gate.SvgNode;

/**
 * Keeps pictures away from Batik: each becomes a rectangle that stands for it and is decoded here, to at most
 * {@value #MOST_PIXELS} pixels, by leaving out rows and columns evenly.
 */
final class Pictures {

    /** Name of the attribute that holds the number of the picture. */
    static final String NUMBER = "data-picture";

    private static final long MOST_PIXELS = 4_000_000;

    private record Picture(int width, int height, int[] pixels, int step, String fit) {
    }

    private final GateReport report;
    private final List<Picture> pictures = new ArrayList<>();

    Pictures(GateReport report) {
        this.report = report;
    }

    void takeOut(SvgNode node) throws ArtException {
        for (ListIterator<Object> it = node.children().listIterator(); it.hasNext();) {
            if (it.next() instanceof SvgNode child) {
                if (child.name().equals("image")) {
                    it.set(rectangle(child));
                } else {
                    takeOut(child);
                }
            }
        }
    }

    private SvgNode rectangle(SvgNode image) throws ArtException {
        String data = image.attribute("href");
        Picture picture;
        try {
            picture = decode(Base64.getMimeDecoder().decode(data.substring(data.indexOf(',') + 1)),
                    image.attribute("preserveAspectRatio").strip());
        } catch (IOException | RuntimeException e) {
            throw report.refusal("the picture in " + image.where() + " is damaged; place it again and export the art");
        }
        SvgNode rect = image.emptyAs("rect");
        rect.attributes().remove("href");
        rect.attributes().remove("preserveAspectRatio");
        rect.attributes().keySet().removeIf(k -> k.startsWith("stroke") || k.equals("rx") || k.equals("ry"));
        size(rect, "width", picture.width() * picture.step());
        size(rect, "height", picture.height() * picture.step());
        rect.attributes().merge("style", "fill:#000;fill-opacity:1;stroke:none", (a, b) -> a + ";" + b);
        rect.attributes().put(NUMBER, String.valueOf(pictures.size()));
        pictures.add(picture);
        return rect;
    }

    private static void size(SvgNode rect, String key, int natural) {
        String given = rect.attribute(key).strip();
        if (given.isEmpty() || given.equals("auto")) {
            rect.attributes().put(key, String.valueOf(natural));
        }
    }

    private static Picture decode(byte[] bytes, String fit) throws IOException {
        try (MemoryCacheImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw new IOException("no decoder");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
                int step = (int) Math.ceil(Math.sqrt(Math.max(1, pixels / (double) MOST_PIXELS)));
                ImageReadParam param = reader.getDefaultReadParam();
                param.setSourceSubsampling(step, step, 0, 0);
                BufferedImage image = reader.read(0, param);
                int w = image.getWidth();
                int h = image.getHeight();
                return new Picture(w, h, image.getRGB(0, 0, w, h, null, 0, w), step, fit);
            } finally {
                reader.dispose();
            }
        }
    }

    /**
     * The paint for a picture whose rectangle is known.
     *
     * @param box  rectangle of the element, in the element's own units
     * @param at   from these units to mm on the page
     */
    ArtPaint.Raster paint(int number, Rectangle2D box, AffineTransform at, double opacity) {
        Picture p = pictures.get(number);
        Rectangle2D placed = placed(p, box);
        AffineTransform m = new AffineTransform(at);
        m.translate(placed.getX(), placed.getY());
        m.scale(placed.getWidth() / p.width(), placed.getHeight() / p.height());
        double[] six = new double[6];
        m.getMatrix(six);
        return new ArtPaint.Raster(mean(p.pixels()), opacity, p.width(), p.height(), p.pixels(),
                List.of(six[0], six[1], six[2], six[3], six[4], six[5]));
    }

    /** The part of the rectangle that the picture fills, or the larger one it would fill before it is cut. */
    Rectangle2D placed(int number, Rectangle2D box) {
        return placed(pictures.get(number), box);
    }

    private static Rectangle2D placed(Picture p, Rectangle2D box) {
        if (p.fit().startsWith("none")) {
            return box;
        }
        double sx = box.getWidth() / p.width();
        double sy = box.getHeight() / p.height();
        double s = p.fit().endsWith("slice") ? Math.max(sx, sy) : Math.min(sx, sy);
        double alignX = p.fit().startsWith("xMin") ? 0 : p.fit().startsWith("xMax") ? 1 : 0.5;
        double alignY = p.fit().contains("YMin") ? 0 : p.fit().contains("YMax") ? 1 : 0.5;
        double w = p.width() * s;
        double h = p.height() * s;
        return new Rectangle2D.Double(box.getX() + (box.getWidth() - w) * alignX,
                box.getY() + (box.getHeight() - h) * alignY, w, h);
    }

    private static int mean(int[] pixels) {
        long r = 0;
        long g = 0;
        long b = 0;
        long weight = 0;
        for (int p : pixels) {
            int a = p >>> 24;
            r += (long) a * (p >> 16 & 0xff);
            g += (long) a * (p >> 8 & 0xff);
            b += (long) a * (p & 0xff);
            weight += a;
        }
        return weight == 0 ? 0xffffff : (int) (r / weight) << 16 | (int) (g / weight) << 8 | (int) (b / weight);
    }
}
