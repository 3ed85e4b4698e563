/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.figure;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.Label;
import org.eclipse.draw2d.geometry.PrecisionPoint;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Display;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.pollex.edit.Pose;
import org.pollex.editor.look.Look;
import org.pollex.editor.view.Scale;

/**
 * A mark at a pose. The paths are built once in the mark's own coordinates; moving, scaling and turning only change the
 * transform. The figure itself is the preview of a drag: show another pose, then the old one again.
 */
public final class MarkFigure extends Figure {

    private static final double PLACEHOLDER = 4;
    private static final double LONG = 1e6;
    private static final int INSET = 4;
    private static final int LEAST_ROOM = 72;

    private static final MarkLook NOTHING = new MarkLook(List.of(), List.of(), "");

    private record Painted(Path path, Color colour) {
    }

    private final List<Painted> painted = new ArrayList<>();
    private MarkLook look = NOTHING;
    private Pose pose = new Pose(0, 0, 1, 0, false);
    private Coordinate[] outline = {};
    private boolean ghost;
    private final AreasPicture picture = new AreasPicture();
    private boolean moving;
    private boolean moved;

    /** Shows other areas. */
    public void show(MarkLook shown) {
        if (shown == look) {
            return;
        }
        disposePaths();
        look = shown;
        setToolTip(shown.trouble().isEmpty() ? null : new Label(" " + shown.trouble() + " "));
        for (MarkLook.Area area : shown.areas()) {
            painted.add(new Painted(Paths.of(Display.getCurrent(), area.area()), new Color(area.colour())));
        }
        place(pose);
    }

    /** Shows the mark at another pose. */
    public void place(Pose shown) {
        moved = moving && shown.scale() == pose.scale() && shown.turn() == pose.turn()
                && shown.mirror() == pose.mirror();
        pose = shown;
        outline = placedHull();
        Envelope box = new Envelope();
        for (Coordinate point : outline) {
            box.expandToInclude(point);
        }
        Rectangle bounds = ItemFigure.box(box);
        if (bounds.equals(getBounds())) {
            repaint();
        } else {
            setBounds(bounds);
        }
        fireFigureMoved();
    }

    /** Whether the poses that are shown are steps of a gesture, until it ends. */
    public void setMoving(boolean on) {
        moving = on;
        if (!on) {
            moved = false;
            picture.dispose();
        }
    }

    /** The pose shown now, during a drag the candidate. */
    public Pose pose() {
        return pose;
    }

    /** While the exact print of the side is drawn below, the figure only takes the mouse. */
    public void setGhost(boolean on) {
        if (ghost != on) {
            ghost = on;
            repaint();
        }
    }

    /** Hull at the shown pose, mm on the item, not closed. */
    public Coordinate[] outline() {
        return outline.clone();
    }

    /** Frees the paths. */
    public void disposePaths() {
        painted.forEach(each -> each.path().dispose());
        painted.clear();
        picture.dispose();
        look = NOTHING;
    }

    private Coordinate[] placedHull() {
        List<Coordinate> hull = look.hull();
        if (hull.size() < 3) {
            hull = List.of(new Coordinate(-PLACEHOLDER, -PLACEHOLDER), new Coordinate(PLACEHOLDER, -PLACEHOLDER),
                    new Coordinate(PLACEHOLDER, PLACEHOLDER), new Coordinate(-PLACEHOLDER, PLACEHOLDER));
        }
        double cos = Math.cos(Math.toRadians(pose.turn())) * pose.scale();
        double sin = Math.sin(Math.toRadians(pose.turn())) * pose.scale();
        double flip = pose.mirror() ? -1 : 1;
        Coordinate[] placed = new Coordinate[hull.size()];
        for (int i = 0; i < placed.length; i++) {
            double x = hull.get(i).x * flip;
            double y = hull.get(i).y;
            placed[i] = new Coordinate(pose.x() + x * cos - y * sin, pose.y() + x * sin + y * cos);
        }
        return placed;
    }

    @Override
    public boolean containsPoint(int x, int y) {
        if (!getBounds().contains(x, y) || outline.length < 3) {
            return false;
        }
        Coordinate[] ring = java.util.Arrays.copyOf(outline, outline.length + 1);
        ring[outline.length] = outline[0];
        return PointLocation.isInRing(new Coordinate(Scale.mm(x), Scale.mm(y)), ring);
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        if (ghost || moved && look.trouble().isEmpty() && paintPicture(graphics)) {
            return;
        }
        graphics.pushState();
        graphics.setAntialias(SWT.ON);
        graphics.translate((float) (pose.x() * Scale.UM), (float) (pose.y() * Scale.UM));
        graphics.rotate((float) pose.turn());
        graphics.scale((float) (pose.mirror() ? -pose.scale() : pose.scale()), (float) pose.scale());
        if (look.trouble().isEmpty()) {
            for (Painted each : painted) {
                graphics.setBackgroundColor(each.colour());
                graphics.fillPath(each.path());
            }
        } else {
            paintPlaceholder(graphics);
        }
        graphics.popState();
    }

    private boolean paintPicture(Graphics graphics) {
        if (!picture.ready(pose, getBounds(), zoom(), this::fill)) {
            return false;
        }
        picture.paint(graphics, this, pose);
        return true;
    }

    /** Pixels a micrometre. */
    private double zoom() {
        PrecisionPoint start = new PrecisionPoint(0, 0);
        PrecisionPoint along = new PrecisionPoint(LONG, 0);
        translateToAbsolute(start);
        translateToAbsolute(along);
        return (along.preciseX - start.preciseX) / LONG;
    }

    private void fill(GC gc) {
        for (Painted each : painted) {
            gc.setBackground(each.colour());
            gc.fillPath(each.path());
        }
    }

    /** Drawn in pixels, so that the reason can be read at any zoom at which it has room. */
    private void paintPlaceholder(Graphics graphics) {
        int half = Scale.um(PLACEHOLDER);
        Display display = Display.getCurrent();
        graphics.setForegroundColor(new Color(rgb(Look.PLACEHOLDER)));
        graphics.setBackgroundColor(new Color(rgb(Look.FLANK)));
        graphics.setLineWidth(Scale.um(0.15));
        graphics.fillRectangle(-half, -half, 2 * half, 2 * half);
        graphics.drawRectangle(-half, -half, 2 * half, 2 * half);
        float pixel = (float) (1 / (zoom() * pose.scale()));
        int room = Math.round(2 * half / pixel) - 2 * INSET;
        TextLayout reason = room < LEAST_ROOM || pose.mirror() ? null : reason(display, room);
        if (reason == null) {
            graphics.drawLine(-half, -half, half, half);
            graphics.drawLine(-half, half, half, -half);
        } else {
            // no state is pushed here: a turned clip cannot be saved; the caller restores what it saved before turning
            graphics.scale(pixel);
            graphics.drawTextLayout(reason, -room / 2, -reason.getBounds().height / 2);
            reason.dispose();
        }
    }

    /** The whole reason, or its first half, whichever fits into a square; null when neither does. */
    private TextLayout reason(Display display, int room) {
        for (String each : new String[] {look.trouble(), look.trouble().split(";", 2)[0]}) {
            TextLayout text = new TextLayout(display);
            text.setText(each);
            text.setWidth(room);
            text.setAlignment(SWT.CENTER);
            if (text.getBounds().height <= room) {
                return text;
            }
            text.dispose();
        }
        return null;
    }

    private static RGB rgb(int colour) {
        return new RGB(colour >> 16 & 255, colour >> 8 & 255, colour & 255);
    }
}
