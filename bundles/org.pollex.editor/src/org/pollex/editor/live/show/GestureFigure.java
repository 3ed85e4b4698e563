/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live.show;

import java.util.List;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.pollex.edit.Pose;
import org.pollex.editor.figure.Hatch;
import org.pollex.editor.figure.Paths;
import org.pollex.editor.figure.WholePixels;
import org.pollex.editor.live.ThinPlace;
import org.pollex.editor.live.ZoneParts;
import org.pollex.editor.view.Scale;

/**
 * Over a mark that is being moved, scaled or turned: thin places at their walls, and the part in a zone that is not
 * safe in the colour and with the hatch of that zone, as it was cut in the background a moment ago.
 */
final class GestureFigure extends Figure {

    private static final int FLANK = 4;
    private static final int CORE = 2;
    private static final int TINT = 190;
    private static final int OPAQUE = 255;
    private static final double CELL = 4;
    private static final int HATCHED = 3000;
    private static final RGB DARK = new RGB(40, 30, 30);

    private final java.util.function.DoubleSupplier zoom;
    private Pose pose = new Pose(0, 0, 1, 0, false);
    private List<ThinPlace> places = List.of();
    private LinesPicture picture;
    private Geometry off;
    private Geometry wear;

    /** @param zoom pixels a micrometre now */
    GestureFigure(java.util.function.DoubleSupplier zoom) {
        this.zoom = zoom;
    }

    /**
     * The mark is at a pose.
     *
     * @param bounds  of the mark, micrometres
     * @param offPart the part of the mark that does not print, about its middle; null when all does
     * @param wearing the part of the mark that wears, about its middle; null when none does
     */
    void show(Pose shown, Rectangle bounds, Geometry offPart, Geometry wearing, List<ThinPlace> thin) {
        pose = shown;
        places = thin;
        off = offPart;
        wear = wearing;
        Rectangle box = bounds.getCopy().expand(300, 300);
        if (box.equals(getBounds())) {
            repaint();
        } else {
            setBounds(box);
        }
        setVisible(true);
    }

    /** Takes the thin places as a picture, null when they are to be drawn line by line; the figure disposes it. */
    void picture(LinesPicture drawn) {
        if (picture != null) {
            picture.image().dispose();
        }
        picture = drawn;
    }

    /** The gesture ended. */
    void end() {
        setVisible(false);
        picture(null);
        places = List.of();
        off = null;
        wear = null;
    }

    /** How many thin places are shown. */
    int count() {
        return isVisible() ? places.size() : 0;
    }

    /** Whether a part off the edge is shown. */
    boolean showsOff() {
        return isVisible() && off != null;
    }

    /** Whether a part in the wear zone is shown. */
    boolean showsWear() {
        return isVisible() && wear != null;
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return false;
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        graphics.setAntialias(SWT.ON);
        AffineTransformation placing = ZoneParts.placing(pose);
        tint(graphics, placing, wear, Tone.WARNING, Hatch.Kind.SINGLE);
        tint(graphics, placing, off, Tone.ERROR, Hatch.Kind.CROSSED);
        if (picture == null) {
            paintLines(graphics, placing);
        } else {
            paintPicture(graphics);
        }
    }

    private void paintPicture(Graphics graphics) {
        double now = zoom.getAsDouble();
        Pose then = picture.pose();
        graphics.pushState();
        WholePixels.translate(graphics, this, pose, now);
        if (pose.turn() != then.turn()) {
            graphics.rotate((float) (pose.turn() - then.turn()));
        }
        graphics.scale((float) (pose.scale() * Scale.UM / (then.scale() * picture.zoom())));
        graphics.drawImage(picture.image(), picture.left(), picture.top());
        graphics.popState();
    }

    private void paintLines(Graphics graphics, AffineTransformation placing) {
        double px = 1 / zoom.getAsDouble();
        double cell = CELL * px / (Scale.UM * pose.scale());
        Path lines = new Path(Display.getCurrent());
        Coordinate at = new Coordinate();
        ThinPlace.Pen pen = (x, y, lifted) -> {
            at.x = x;
            at.y = y;
            placing.transform(at, at);
            if (lifted) {
                lines.moveTo((float) (at.x * Scale.UM), (float) (at.y * Scale.UM));
            } else {
                lines.lineTo((float) (at.x * Scale.UM), (float) (at.y * Scale.UM));
            }
        };
        places.forEach(each -> each.draw(cell, pen));
        for (int pass = 0; pass < 2; pass++) {
            graphics.setForegroundColor(pass == 0 ? Display.getCurrent().getSystemColor(SWT.COLOR_WHITE)
                    : new Color(Tone.ERROR));
            graphics.setLineWidth(Math.max(1, (int) Math.round((pass == 0 ? FLANK : CORE) * px)));
            graphics.drawPath(lines);
        }
        lines.dispose();
    }

    /** Tinted and hatched: wears single, does not print crossed, so that they differ without colour too. */
    private void tint(Graphics graphics, AffineTransformation placing, Geometry part, RGB tone, Hatch.Kind kind) {
        if (part == null || part.isEmpty()) {
            return;
        }
        Path path = Paths.of(Display.getCurrent(), placing.transform(part));
        graphics.setBackgroundColor(new Color(tone));
        graphics.setAlpha(TINT);
        graphics.fillPath(path);
        graphics.setAlpha(OPAQUE);
        // a hatch in the finest of art would be drawn late and seen by nobody
        if (part.getNumPoints() <= HATCHED) {
            Hatch.fill(graphics, Display.getCurrent(), path, kind, zoom.getAsDouble(), DARK);
        }
        path.dispose();
    }
}
