/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.worker;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

import org.pollex.artwork.Art;
import org.pollex.artwork.ArtNotice;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.ArtRegion;
import org.pollex.artwork.ArtText;
import org.pollex.artwork.FillRule;

/**
 * Art as bytes and back, without loss: numbers keep every bit. Not a file format; both ends are of the same version.
 * Reading allocates no more than the bytes that are there can fill.
 */
public final class ArtWire {

    private static final int FLAT = 0;
    private static final int GRADIENT = 1;
    private static final int RASTER = 2;

    private ArtWire() {
    }

    /** Writes art. */
    public static void write(Art art, DataOutputStream out) throws IOException {
        text(art.name(), out);
        out.writeDouble(art.width());
        out.writeDouble(art.height());
        out.writeBoolean(art.sized());
        out.writeInt(art.regions().size());
        for (ArtRegion region : art.regions()) {
            text(region.id(), out);
            path(region.path(), out);
            paint(region.paint(), out);
            out.writeInt(region.clips().size());
            for (ArtPath clip : region.clips()) {
                path(clip, out);
            }
            out.writeBoolean(region.stroke());
        }
        out.writeInt(art.texts().size());
        for (ArtText t : art.texts()) {
            text(t.text(), out);
            text(t.asked(), out);
            text(t.used(), out);
            out.writeDouble(t.size());
            out.writeDouble(t.xHeight());
            out.writeInt(t.regions().size());
            for (int region : t.regions()) {
                out.writeInt(region);
            }
        }
        out.writeInt(art.notices().size());
        for (ArtNotice n : art.notices()) {
            out.writeByte(n.kind().ordinal());
            text(n.feature(), out);
            text(n.element(), out);
            text(n.message(), out);
        }
    }

    /** Reads what {@link #write} wrote. */
    public static Art read(DataInputStream in) throws IOException {
        String name = text(in);
        double width = in.readDouble();
        double height = in.readDouble();
        boolean sized = in.readBoolean();
        List<ArtRegion> regions = new ArrayList<>();
        for (int i = in.readInt(); i > 0; i--) {
            String id = text(in);
            ArtPath path = path(in);
            ArtPaint paint = paint(in);
            List<ArtPath> clips = new ArrayList<>();
            for (int c = in.readInt(); c > 0; c--) {
                clips.add(path(in));
            }
            regions.add(new ArtRegion(id, path, paint, clips, in.readBoolean()));
        }
        List<ArtText> texts = new ArrayList<>();
        for (int i = in.readInt(); i > 0; i--) {
            String text = text(in);
            String asked = text(in);
            String used = text(in);
            double size = in.readDouble();
            double xHeight = in.readDouble();
            List<Integer> of = new ArrayList<>();
            for (int r = in.readInt(); r > 0; r--) {
                of.add(in.readInt());
            }
            texts.add(new ArtText(text, asked, used, size, xHeight, of));
        }
        List<ArtNotice> notices = new ArrayList<>();
        for (int i = in.readInt(); i > 0; i--) {
            ArtNotice.Kind kind = ArtNotice.Kind.values()[in.readByte()];
            notices.add(new ArtNotice(kind, text(in), text(in), text(in)));
        }
        return new Art(name, width, height, sized, regions, texts, notices);
    }

    private static void path(ArtPath path, DataOutputStream out) throws IOException {
        out.writeBoolean(path.rule() == FillRule.EVEN_ODD);
        double[] c = new double[6];
        for (PathIterator it = path.iterator(new AffineTransform()); !it.isDone(); it.next()) {
            int kind = it.currentSegment(c);
            out.writeByte(kind);
            for (int i = 0; i < numbers(kind); i++) {
                out.writeDouble(c[i]);
            }
        }
        out.writeByte(-1);
    }

    private static int numbers(int kind) {
        return switch (kind) {
            case PathIterator.SEG_MOVETO, PathIterator.SEG_LINETO -> 2;
            case PathIterator.SEG_QUADTO -> 4;
            case PathIterator.SEG_CUBICTO -> 6;
            default -> 0;
        };
    }

    private static ArtPath path(DataInputStream in) throws IOException {
        FillRule rule = in.readBoolean() ? FillRule.EVEN_ODD : FillRule.NON_ZERO;
        Path2D.Double path = new Path2D.Double();
        double[] c = new double[6];
        for (int kind = in.readByte(); kind >= 0; kind = in.readByte()) {
            for (int i = 0; i < numbers(kind); i++) {
                c[i] = in.readDouble();
            }
            switch (kind) {
                case PathIterator.SEG_MOVETO -> path.moveTo(c[0], c[1]);
                case PathIterator.SEG_LINETO -> path.lineTo(c[0], c[1]);
                case PathIterator.SEG_QUADTO -> path.quadTo(c[0], c[1], c[2], c[3]);
                case PathIterator.SEG_CUBICTO -> path.curveTo(c[0], c[1], c[2], c[3], c[4], c[5]);
                default -> path.closePath();
            }
        }
        return ArtPath.of(path, rule);
    }

    private static void paint(ArtPaint paint, DataOutputStream out) throws IOException {
        out.writeByte(paint instanceof ArtPaint.Flat ? FLAT : paint instanceof ArtPaint.Gradient ? GRADIENT : RASTER);
        out.writeInt(paint.rgb());
        out.writeDouble(paint.opacity());
        if (paint instanceof ArtPaint.Gradient g) {
            out.writeBoolean(g.radial());
            doubles(g.axis(), out);
            out.writeInt(g.stops().size());
            for (ArtPaint.Stop stop : g.stops()) {
                out.writeDouble(stop.offset());
                out.writeInt(stop.rgb());
                out.writeDouble(stop.opacity());
            }
        } else if (paint instanceof ArtPaint.Raster r) {
            out.writeInt(r.width());
            out.writeInt(r.height());
            for (int pixel : r.pixels()) {
                out.writeInt(pixel);
            }
            doubles(r.matrix(), out);
        }
    }

    private static ArtPaint paint(DataInputStream in) throws IOException {
        int kind = in.readByte();
        int rgb = in.readInt();
        double opacity = in.readDouble();
        if (kind == FLAT) {
            return new ArtPaint.Flat(rgb, opacity);
        }
        if (kind == GRADIENT) {
            boolean radial = in.readBoolean();
            List<Double> axis = doubles(in);
            List<ArtPaint.Stop> stops = new ArrayList<>();
            for (int i = in.readInt(); i > 0; i--) {
                stops.add(new ArtPaint.Stop(in.readDouble(), in.readInt(), in.readDouble()));
            }
            return new ArtPaint.Gradient(rgb, opacity, radial, axis, stops);
        }
        int width = in.readInt();
        int height = in.readInt();
        if ((long) width * height * 4 > in.available()) {
            throw new IOException("The picture is cut off.");
        }
        int[] pixels = new int[width * height];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = in.readInt();
        }
        return new ArtPaint.Raster(rgb, opacity, width, height, pixels, doubles(in));
    }

    private static void doubles(List<Double> values, DataOutputStream out) throws IOException {
        out.writeByte(values.size());
        for (double value : values) {
            out.writeDouble(value);
        }
    }

    private static List<Double> doubles(DataInputStream in) throws IOException {
        List<Double> values = new ArrayList<>();
        for (int i = in.readByte(); i > 0; i--) {
            values.add(in.readDouble());
        }
        return values;
    }

    static void text(String text, DataOutputStream out) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    static String text(DataInputStream in) throws IOException {
        return new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8);
    }
}
