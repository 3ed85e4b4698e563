/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtNotice;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.FillRule;
import org.pollex.model.design.Mark;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.ShapeKind;
import org.pollex.model.design.TextLine;
import org.pollex.print.arrange.PaintedShape;
import org.pollex.print.arrange.TooIntricateException;

/** Puts lines of text and plain shapes on the item. */
final class PlainMarks {

    private static final int RIM_STEPS = 720;

    private final PathRings rings;
    private final Press press;

    PlainMarks(PathRings rings, Press press) {
        this.rings = rings;
        this.press = press;
    }

    /** A line of text, set by {@code lettering}; its middle is the middle of the box round the letters. */
    MarkShapes line(TextLine line, Lettering lettering) throws ArtException, PrintException, TooIntricateException {
        Lettering.SetLine set = lettering.set(line);
        String name = MarkPlace.text(line.getName());
        MarkShapes mark = inked(line, name.isEmpty() ? MarkPlace.text(line.getText()) : name, true, line.getInk());
        Rectangle2D box = set.outline().bounds();
        AffineTransform place = MarkPlace.of(line, box.getCenterX(), box.getCenterY());
        if (!set.missing().isEmpty()) {
            mark.notices.add(new ArtNotice(ArtNotice.Kind.FONT_REPLACED, "font", mark.id, set.missing()));
        }
        paint(mark, set.outline(), place);
        if (!mark.items.isEmpty()) {
            mark.types.add(new PrintedType(mark.id, MarkPlace.text(line.getText()), line.getSize() * line.getScale(),
                    set.xHeight() * line.getScale(), PlacementReader.box(box, place)));
        }
        return mark;
    }

    /** A plain shape, filled, or its outline as a band of the line width with the edge in its middle. */
    MarkShapes shape(PlainShape shape) throws PrintException, TooIntricateException {
        double w = shape.getWidth();
        double h = shape.getHeight();
        double line = shape.getLineWidth();
        if (!(w > 0) || !(h > 0) || !(line >= 0) || !Double.isFinite(w + h + line)) {
            throw new PrintException("Shape " + MarkPlace.label(shape) + " measures " + w + " x " + h
                    + " mm with a line of " + line
                            + " mm; give it a width and height above 0 and a line of 0 or more.");
        }
        String name = MarkPlace.text(shape.getName());
        MarkShapes mark = inked(shape, name.isEmpty() ? shape.getKind().getLiteral() : name, false, shape.getInk());
        Path2D.Double path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        FillRule rule = FillRule.EVEN_ODD;
        if (shape.getKind() == ShapeKind.RECTANGLE) {
            path.append(new Rectangle2D.Double(-(w + line) / 2, -(h + line) / 2, w + line, h + line), false);
            if (line > 0 && line < Math.min(w, h)) {
                path.append(new Rectangle2D.Double(-(w - line) / 2, -(h - line) / 2, w - line, h - line), false);
            }
        } else if (line == 0) {
            path.append(new Ellipse2D.Double(-w / 2, -h / 2, w, h), false);
        } else {
            rule = FillRule.NON_ZERO;
            rim(path, w / 2, h / 2, line / 2);
            if (line < Math.min(w, h)) {
                rim(path, w / 2, h / 2, -line / 2);
            }
        }
        paint(mark, ArtPath.of(path, rule), MarkPlace.of(shape, 0, 0));
        return mark;
    }

    /**
     * The parallel of an ellipse at a distance, exact at 720 places; inner ones run backwards. Where an inner parallel
     * folds over, the fold lies inside the band and the winding stays off 0 there.
     */
    private static void rim(Path2D.Double path, double a, double b, double off) {
        for (int i = 0; i < RIM_STEPS; i++) {
            double t = (off < 0 ? -2 : 2) * Math.PI * i / RIM_STEPS;
            double nx = b * Math.cos(t);
            double ny = a * Math.sin(t);
            double n = Math.hypot(nx, ny);
            double x = a * Math.cos(t) + off * nx / n;
            double y = b * Math.sin(t) + off * ny / n;
            if (i == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        path.closePath();
    }

    private MarkShapes inked(Mark mark, String name, boolean text, String asked) {
        String ink = MarkPlace.text(asked);
        String first = press.inks().isEmpty() ? ColourMatch.BARE : press.inks().keySet().iterator().next();
        boolean known = press.knows(ink);
        MarkShapes shapes = MarkShapes.ofInk(mark, name, text, known ? ink : first);
        if (!known && !ink.isEmpty()) {
            shapes.notices.add(InkNotice.missing(mark, ink,
                    ColourMatch.BARE.equals(first) ? "it stays bare" : "it prints in " + first));
        }
        return shapes;
    }

    private void paint(MarkShapes mark, ArtPath path, AffineTransform place) throws TooIntricateException {
        List<double[]> outline = rings.of(path, place);
        if (!outline.isEmpty()) {
            mark.items.add(new MarkShapes.Item(new PaintedShape(outline, path.rule() == FillRule.EVEN_ODD, List.of(),
                    !mark.overprints()), press.rgb(mark.ink), 1));
        }
    }
}
