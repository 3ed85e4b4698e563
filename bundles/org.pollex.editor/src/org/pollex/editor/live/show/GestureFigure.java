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
import org.eclipse.swt.widgets.Display;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.pollex.edit.Pose;
import org.pollex.editor.figure.Paths;
import org.pollex.editor.live.ThinPlace;
import org.pollex.editor.live.ZoneParts;
import org.pollex.editor.view.Scale;

/**
 * Over a mark that is being moved, scaled or turned: thin places at their walls, and the part in a zone that is not
 * safe
 * in the colour of that zone, as it was cut in the background a moment ago.
 */
final class GestureFigure extends Figure {

    private static final int FLANK = 4;
    private static final int CORE = 2;
    private static final int TINT = 190;

    private final java.util.function.DoubleSupplier zoom;
    private Pose pose = new Pose(0, 0, 1, 0, false);
    private List<ThinPlace> places = List.of();
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

    /** The gesture ended. */
    void end() {
        setVisible(false);
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
        tint(graphics, wear, new Color(Tone.WARNING));
        tint(graphics, off, new Color(Tone.ERROR));
        double px = 1 / zoom.getAsDouble();
        Path lines = new Path(Display.getCurrent());
        for (ThinPlace place : places) {
            add(lines, placing, place);
        }
        for (int pass = 0; pass < 2; pass++) {
            graphics.setForegroundColor(pass == 0 ? Display.getCurrent().getSystemColor(SWT.COLOR_WHITE)
                    : new Color(Tone.ERROR));
            graphics.setLineWidth(Math.max(1, (int) Math.round((pass == 0 ? FLANK : CORE) * px)));
            graphics.drawPath(lines);
        }
        lines.dispose();
    }

    private void tint(Graphics graphics, Geometry part, Color colour) {
        if (part == null || part.isEmpty()) {
            return;
        }
        Path path = Paths.of(Display.getCurrent(), part);
        graphics.pushState();
        graphics.translate((float) (pose.x() * Scale.UM), (float) (pose.y() * Scale.UM));
        graphics.rotate((float) pose.turn());
        graphics.scale((float) (pose.mirror() ? -pose.scale() : pose.scale()), (float) pose.scale());
        graphics.setBackgroundColor(colour);
        graphics.setAlpha(TINT);
        graphics.fillPath(path);
        graphics.popState();
        path.dispose();
    }

    private static void add(Path lines, AffineTransformation placing, ThinPlace place) {
        double[] line = place.line();
        org.locationtech.jts.geom.Coordinate at = new org.locationtech.jts.geom.Coordinate();
        for (int i = 0; i + 1 < line.length; i += 2) {
            to(lines, placing, at, line[i], line[i + 1], i == 0);
        }
        to(lines, placing, at, place.ax(), place.ay(), true);
        to(lines, placing, at, place.bx(), place.by(), false);
    }

    private static void to(Path lines, AffineTransformation placing, org.locationtech.jts.geom.Coordinate at, double x,
            double y, boolean first) {
        at.x = x;
        at.y = y;
        placing.transform(at, at);
        if (first) {
            lines.moveTo((float) (at.x * Scale.UM), (float) (at.y * Scale.UM));
        } else {
            lines.lineTo((float) (at.x * Scale.UM), (float) (at.y * Scale.UM));
        }
    }
}
