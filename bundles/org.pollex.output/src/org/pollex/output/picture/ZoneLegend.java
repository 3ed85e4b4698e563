/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.pollex.artwork.font.ShippedFont;
import org.pollex.output.drawing.Hatch;
import org.pollex.output.drawing.HouseFont;
import org.pollex.output.drawing.Shapes;
import org.pollex.output.drawing.ZoneLook;

/** The line below a picture that says which hatch is which zone. */
final class ZoneLegend {

    private static final List<ZoneLook> ORDER = List.of(ZoneLook.SAFE, ZoneLook.WEAR_RISK, ZoneLook.UNPRINTABLE);
    private static final double SIZE = 2.1;
    private static final double BOX = 2.6;

    private final PictureOptions options;
    private final ShippedFont letters = HouseFont.REGULAR.font();

    ZoneLegend(PictureOptions options) {
        this.options = options;
    }

    /** Paints it with its upper left corner at a place in mm; shrinks it when it is wider than it may be. */
    void paint(Graphics2D onto, double x, double y, double widest) {
        double width = ORDER.stream().mapToDouble(this::width).sum();
        double shrink = Math.min(1, widest / width);
        Graphics2D g = (Graphics2D) onto.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        AffineTransform place = AffineTransform.getScaleInstance(options.scale(), options.scale());
        place.translate(x, y);
        place.scale(shrink, shrink);
        g.transform(place);
        double at = 0;
        for (ZoneLook look : ORDER) {
            sample(g, look, at);
            g.setColor(new Color(0x333333));
            g.fill(letters.outline(look.label(), SIZE)
                    .transformed(AffineTransform.getTranslateInstance(at + BOX + 1, BOX - 0.5)).shape());
            at += width(look);
        }
        g.dispose();
    }

    private double width(ZoneLook look) {
        return BOX + 1 + letters.advance(look.label(), SIZE) + 3;
    }

    private static void sample(Graphics2D g, ZoneLook look, double x) {
        Geometry box = new GeometryFactory().toGeometry(new Envelope(x, x + BOX, 0, BOX));
        g.setColor(Color.WHITE);
        g.fill(Shapes.path(box));
        g.setColor(new Color(look.rgb()));
        if (look.pitch() > 0) {
            g.setStroke(new BasicStroke(0.1f));
            g.draw(Shapes.path(Hatch.lines(box, look.angle(), Math.min(look.pitch(), 0.7))));
            g.draw(Shapes.path(box));
        } else {
            g.setStroke(new BasicStroke(0.16f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f,
                    new float[] {0.8f, 0.4f}, 0f));
            g.draw(Shapes.path(box));
        }
    }
}
