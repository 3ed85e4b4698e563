/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.awt.Color;
import java.awt.Paint;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.apache.batik.ext.awt.LinearGradientPaint;
import org.apache.batik.ext.awt.MultipleGradientPaint;
import org.apache.batik.ext.awt.RadialGradientPaint;
import org.pollex.artwork.ArtNotice.Kind;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.svg.gate.GateReport;

/** Turns the paints of Java2D and Batik into those of art, patterns excepted. */
final class PaintReader {

    private static final double ROUND = 1e-3;

    private final GateReport report;

    PaintReader(GateReport report) {
        this.report = report;
    }

    /** The paint under a transform to mm and a further opacity; nothing when it leaves no trace. */
    Optional<ArtPaint> read(Paint paint, AffineTransform at, double opacity, String element) {
        if (paint instanceof Color color) {
            double solid = opacity * color.getAlpha() / 255.0;
            return solid > 0 ? Optional.of(new ArtPaint.Flat(color.getRGB() & 0xffffff, solid)) : Optional.empty();
        }
        if (paint instanceof MultipleGradientPaint gradient && opacity > 0) {
            return Optional.of(gradient(gradient, at, opacity, element));
        }
        if (paint != null && !(paint instanceof MultipleGradientPaint)) {
            report.note(Kind.UNSUPPORTED, "paint", element, "its paint is not known and it was left out");
        }
        return Optional.empty();
    }

    private ArtPaint gradient(MultipleGradientPaint gradient, AffineTransform at, double opacity, String element) {
        List<ArtPaint.Stop> stops = new ArrayList<>();
        Color[] colors = gradient.getColors();
        for (int i = 0; i < colors.length; i++) {
            stops.add(new ArtPaint.Stop(gradient.getFractions()[i], colors[i].getRGB() & 0xffffff,
                    colors[i].getAlpha() / 255.0));
        }
        if (!gradient.getCycleMethod().equals(MultipleGradientPaint.NO_CYCLE)) {
            report.note(Kind.UNSUPPORTED, "spreadMethod", element,
                    "a gradient that repeats is drawn once; draw the bands one by one");
        }
        AffineTransform m = new AffineTransform(at);
        m.concatenate(gradient.getTransform());
        int mean = mean(stops);
        if (gradient instanceof LinearGradientPaint linear) {
            return new ArtPaint.Gradient(mean, opacity, false, axis(linear, m), stops);
        }
        RadialGradientPaint radial = (RadialGradientPaint) gradient;
        return new ArtPaint.Gradient(mean, opacity, true, circle(radial, m, element), stops);
    }

    /** A skewed gradient still has straight bands: the axis is drawn anew across them. */
    private static List<Double> axis(LinearGradientPaint linear, AffineTransform m) {
        Point2D a = linear.getStartPoint();
        Point2D b = linear.getEndPoint();
        Point2D p = m.transform(a, null);
        Point2D q = m.transform(b, null);
        Point2D band = m.deltaTransform(new Point2D.Double(a.getY() - b.getY(), b.getX() - a.getX()), null);
        double nx = -band.getY();
        double ny = band.getX();
        double n2 = nx * nx + ny * ny;
        double t = n2 == 0 ? 0 : ((q.getX() - p.getX()) * nx + (q.getY() - p.getY()) * ny) / n2;
        return List.of(p.getX(), p.getY(), p.getX() + t * nx, p.getY() + t * ny);
    }

    private List<Double> circle(RadialGradientPaint radial, AffineTransform m, String element) {
        Point2D c = m.transform(radial.getCenterPoint(), null);
        double scale = Math.sqrt(Math.abs(m.getDeterminant()));
        boolean round = Math.abs(m.getScaleX() * m.getShearX() + m.getShearY() * m.getScaleY()) < ROUND * scale * scale
                && Math.abs(Math.hypot(m.getScaleX(), m.getShearY()) - scale) < ROUND * scale;
        if (!round) {
            report.note(Kind.UNSUPPORTED, "radialGradient", element,
                    "an elliptic gradient is drawn round; make its shape as wide as high");
        }
        if (radial.getFocusPoint().distance(radial.getCenterPoint()) > ROUND * radial.getRadius()) {
            report.note(Kind.UNSUPPORTED, "radialGradient", element,
                    "a gradient that runs from another point than its middle is drawn from its middle");
        }
        return List.of(c.getX(), c.getY(), radial.getRadius() * scale, 0.0);
    }

    private static int mean(List<ArtPaint.Stop> stops) {
        double[] sum = new double[3];
        double weight = 0;
        for (int i = 0; i < stops.size(); i++) {
            double from = i == 0 ? 0 : (stops.get(i - 1).offset() + stops.get(i).offset()) / 2;
            double to = i == stops.size() - 1 ? 1 : (stops.get(i + 1).offset() + stops.get(i).offset()) / 2;
            double w = Math.max(1e-9, to - from) * Math.max(1e-3, stops.get(i).opacity());
            int rgb = stops.get(i).rgb();
            sum[0] += w * (rgb >> 16 & 0xff);
            sum[1] += w * (rgb >> 8 & 0xff);
            sum[2] += w * (rgb & 0xff);
            weight += w;
        }
        return (int) Math.round(sum[0] / weight) << 16 | (int) Math.round(sum[1] / weight) << 8
                | (int) Math.round(sum[2] / weight);
    }
}
