/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.TexturePaint;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.List;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.output.drawing.Shapes;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.PrintedTones;
import org.pollex.print.SeenThrough;
import org.pollex.print.ShownArea;
import org.pollex.print.item.ItemFace;
import org.pollex.print.stock.Stock;

/**
 * Paints the surface of a face and the print on it: on a plain material in one colour for each ink, on a patterned one
 * pixel by pixel, the film of each ink laid on what lies below it. Through clear stock the print of the other face is
 * seen. Colour whose white ends short of its edge shows a rim of itself on the bare stock.
 */
final class PrintPainter {

    private final Printed printed;
    private final PrintedTones tones;
    private final Stock stock;

    PrintPainter(Printed printed) {
        this.printed = printed;
        this.tones = PrintedTones.of(printed);
        this.stock = Stock.of(printed.material());
    }

    /**
     * Paints a face, cut at its outline.
     *
     * @param layer  a picture with transparency, nothing on it yet
     * @param place  from mm of the face to its pixels; not turned
     */
    void paint(BufferedImage layer, AffineTransform place, ItemFace face) {
        Ground ground = stock.plain() ? null : new Ground(layer, place,
                printed.item().mirrored(face.name()));
        Graphics2D g = FacePicture.smooth(layer, new AffineTransform());
        Shape outline = place.createTransformedShape(Shapes.path(face.area()));
        fill(g, ground, outline, Srgb.of(tones.ground()), UnaryOperator.identity());
        g.setComposite(AlphaComposite.SrcAtop);
        List<SeenThrough> behind = SeenThrough.on(printed, tones, face.name());
        for (SeenThrough part : behind) {
            fill(g, ground, shape(part.area(), face, place), Srgb.of(part.over(tones.ground())), part::over);
        }
        PrintedSide side = printed.side(face.name()).orElse(null);
        if (side != null) {
            for (ShownArea part : printed.underbase().shown(side)) {
                Shape shape = shape(part.area(), face, place);
                fill(g, ground, shape, Srgb.of(tones.of(part)), tones.laid(part)::quick);
                for (SeenThrough seen : behind) {
                    g.setClip(shape(seen.area(), face, place));
                    fill(g, ground, shape, Srgb.of(tones.laid(part).over(seen.over(tones.ground()))),
                            stock -> tones.laid(part).quick(seen.over(stock)));
                    g.setClip(null);
                }
            }
        }
        g.dispose();
    }

    private static Shape shape(Geometry area, ItemFace face, AffineTransform place) {
        return place.createTransformedShape(Shapes.path(Shapes.within(area, face.area())));
    }

    private static void fill(Graphics2D g, Ground ground, Shape shape, int plain, UnaryOperator<Lab> film) {
        if (ground == null) {
            g.setColor(new Color(plain));
        } else {
            Rectangle box = shape.getBounds();
            box.grow(2, 2);
            box = box.intersection(new Rectangle(0, 0, ground.width, ground.height));
            if (box.isEmpty()) {
                return;
            }
            g.setPaint(new TexturePaint(ground.under(film, box), box));
        }
        g.fill(shape);
    }

    /** The surface under a picture, pixel by pixel. */
    private final class Ground {

        private final int width;
        private final int height;
        private final short[] numbers;

        Ground(BufferedImage layer, AffineTransform place, boolean mirrored) {
            width = layer.getWidth();
            height = layer.getHeight();
            double step = 1 / place.getScaleX();
            numbers = stock.raster(-place.getTranslateX() * step, -place.getTranslateY() * step, step, width, height,
                    mirrored);
        }

        /** What is seen in a box when a film lies on the surface. */
        BufferedImage under(UnaryOperator<Lab> film, Rectangle box) {
            List<Lab> palette = stock.palette();
            int[] seen = new int[palette.size()];
            BufferedImage image = new BufferedImage(box.width, box.height, BufferedImage.TYPE_INT_RGB);
            int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
            for (int y = 0; y < box.height; y++) {
                int from = (box.y + y) * width + box.x;
                for (int x = 0; x < box.width; x++) {
                    int number = numbers[from + x] & 0xffff;
                    if (seen[number] == 0) {
                        seen[number] = 0xff000000 | Srgb.of(film.apply(palette.get(number)));
                    }
                    pixels[y * box.width + x] = seen[number];
                }
            }
            return image;
        }
    }
}
