/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.testkit;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.LinearGradientPaint;
import java.awt.MultipleGradientPaint;
import java.awt.Paint;
import java.awt.RadialGradientPaint;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;

import org.pollex.artwork.Art;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.ArtRegion;

/**
 * Paints art with Java2D on white, anti-aliased: what the regions say and nothing else. Clips are coverages that are
 * multiplied, so that their edges are as smooth as others.
 */
public final class ArtRaster {

    private ArtRaster() {
    }

    /**
     * Paints.
     *
     * @param width   pixels for the width of the page
     * @param height  pixels for its height
     */
    public static BufferedImage paint(Art art, int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = graphics(image);
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, width, height);
        AffineTransform scale = AffineTransform.getScaleInstance(width / art.width(), height / art.height());
        for (ArtRegion region : art.regions()) {
            Shape shape = shape(region.path(), scale);
            Paint paint = paint(region.paint(), scale);
            if (region.clips().isEmpty() && !(region.paint() instanceof ArtPaint.Raster)) {
                g.setPaint(paint);
                g.fill(shape);
            } else {
                layer(image, g, region, shape, paint, scale);
            }
        }
        g.dispose();
        return image;
    }

    private static Graphics2D graphics(BufferedImage image) {
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        return g;
    }

    private static Shape shape(ArtPath path, AffineTransform scale) {
        return path.transformed(scale).shape();
    }

    private static void layer(BufferedImage image, Graphics2D onto, ArtRegion region, Shape shape, Paint paint,
            AffineTransform scale) {
        int w = image.getWidth();
        int h = image.getHeight();
        BufferedImage layer = new BufferedImage(w, h, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = graphics(layer);
        if (region.paint() instanceof ArtPaint.Raster raster) {
            picture(raster, g, scale);
        } else {
            g.setPaint(paint);
            g.fill(shape);
        }
        g.dispose();
        int[] pixels = layer.getRGB(0, 0, w, h, null, 0, w);
        if (region.paint() instanceof ArtPaint.Raster) {
            cut(pixels, shape, w, h);
        }
        for (ArtPath clip : region.clips()) {
            cut(pixels, shape(clip, scale), w, h);
        }
        layer.setRGB(0, 0, w, h, pixels, 0, w);
        onto.drawImage(layer, 0, 0, null);
    }

    private static void picture(ArtPaint.Raster raster, Graphics2D g, AffineTransform scale) {
        BufferedImage picture = new BufferedImage(raster.width(), raster.height(), BufferedImage.TYPE_INT_ARGB);
        picture.setRGB(0, 0, raster.width(), raster.height(), raster.pixels(), 0, raster.width());
        List<Double> m = raster.matrix();
        AffineTransform at = new AffineTransform(scale);
        at.concatenate(new AffineTransform(m.get(0), m.get(1), m.get(2), m.get(3), m.get(4), m.get(5)));
        g.drawImage(picture, at, null);
    }

    private static void cut(int[] pixels, Shape clip, int w, int h) {
        BufferedImage mask = new BufferedImage(w, h, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = graphics(mask);
        g.setColor(Color.WHITE);
        g.fill(clip);
        g.dispose();
        int[] coverage = mask.getRaster().getSamples(0, 0, w, h, 0, (int[]) null);
        for (int i = 0; i < pixels.length; i++) {
            int alpha = (pixels[i] >>> 24) * coverage[i] / 255;
            pixels[i] = pixels[i] & 0xffffff | alpha << 24;
        }
    }

    private static Paint paint(ArtPaint paint, AffineTransform scale) {
        if (paint instanceof ArtPaint.Gradient gradient) {
            return gradient(gradient, scale);
        }
        return color(paint.rgb(), paint.opacity());
    }

    private static Color color(int rgb, double opacity) {
        return new Color(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff, (int) Math.round(opacity * 255));
    }

    private static Paint gradient(ArtPaint.Gradient gradient, AffineTransform scale) {
        List<ArtPaint.Stop> stops = gradient.stops();
        float[] fractions = new float[stops.size() + 2];
        Color[] colors = new Color[stops.size() + 2];
        int n = 0;
        float before = -1;
        for (ArtPaint.Stop stop : stops) {
            float at = (float) Math.max(0, Math.min(1, stop.offset()));
            if (n == 0 && at > 0) {
                fractions[n] = 0;
                colors[n++] = color(stop.rgb(), stop.opacity() * gradient.opacity());
                before = 0;
            }
            before = at <= before ? Math.nextUp(before) : at;
            if (before <= 1) {
                fractions[n] = before;
                colors[n++] = color(stop.rgb(), stop.opacity() * gradient.opacity());
            }
        }
        if (n == 1) {
            return colors[0];
        }
        float[] f = Arrays.copyOf(fractions, n);
        Color[] c = Arrays.copyOf(colors, n);
        List<Double> a = gradient.axis();
        Point2D p = new Point2D.Double(a.get(0), a.get(1));
        if (gradient.radial()) {
            return new RadialGradientPaint(p, (float) (double) a.get(2), p, f, c,
                    MultipleGradientPaint.CycleMethod.NO_CYCLE, MultipleGradientPaint.ColorSpaceType.SRGB, scale);
        }
        return new LinearGradientPaint(p, new Point2D.Double(a.get(2), a.get(3)), f, c,
                MultipleGradientPaint.CycleMethod.NO_CYCLE, MultipleGradientPaint.ColorSpaceType.SRGB, scale);
    }
}
