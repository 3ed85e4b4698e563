/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.side;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.locationtech.jts.geom.Envelope;
import org.pollex.edit.Pose;
import org.pollex.editor.figure.ItemLook;
import org.pollex.editor.look.Look;
import org.pollex.editor.part.SideScene;
import org.pollex.editor.setting.Amount;
import org.pollex.editor.snap.Boxes;
import org.pollex.editor.snap.Snapper;
import org.pollex.editor.view.Scale;
import org.pollex.model.design.Mark;

/**
 * Which lines does a moved mark keep to, and where are they drawn? Lines are the edges of the safe zone, the centre
 * lines of the item, guides, and edges and middles of the other marks. Shown only while the gesture lasts.
 */
final class SnapLines extends Figure {

    private static final int FLANK_PIXELS = 3;

    private final DoubleSupplier zoom;
    private final Supplier<List<Snapper.Line>> guides;
    private List<Snapper.Line> found = List.of();
    private List<Snapper.Line> shown = List.of();

    /**
     * Lines of a page.
     *
     * @param zoom   pixels a micrometre now
     * @param guides the guides that show
     */
    SnapLines(DoubleSupplier zoom, Supplier<List<Snapper.Line>> guides) {
        this.zoom = zoom;
        this.guides = guides;
        setVisible(false);
    }

    /** The pose shifted onto the lines in reach; nothing is drawn yet. */
    Pose snap(SideScene scene, Mark mark, Pose wished) {
        Snapper.Snap snap = Snapper.snap(Boxes.of(scene.look(mark).hull(), wished), lines(scene, mark),
                Scale.mm(Amount.SNAP_PIXELS.value() / zoom.getAsDouble()));
        found = snap.lines();
        return wished.moved(snap.dx(), snap.dy());
    }

    private List<Snapper.Line> lines(SideScene scene, Mark moved) {
        List<Snapper.Line> lines = new ArrayList<>(guides.get());
        lines.addAll(edges(scene.item()));
        for (Mark other : scene.marks()) {
            if (other != moved) {
                lines.addAll(Snapper.of(Boxes.of(scene.look(other).hull(), Pose.of(other)), Snapper.Source.ART));
            }
        }
        return lines;
    }

    /** The middles of the item and the edges of its safe zone. */
    static List<Snapper.Line> edges(ItemLook item) {
        List<Snapper.Line> lines = new ArrayList<>();
        Envelope area = item.area().getEnvelopeInternal();
        lines.add(new Snapper.Line(true, area.centre().x, Snapper.Source.CENTRE));
        lines.add(new Snapper.Line(false, area.centre().y, Snapper.Source.CENTRE));
        Envelope safe = item.safe().getEnvelopeInternal();
        if (!safe.isNull()) {
            lines.add(new Snapper.Line(true, safe.getMinX(), Snapper.Source.ZONE));
            lines.add(new Snapper.Line(true, safe.getMaxX(), Snapper.Source.ZONE));
            lines.add(new Snapper.Line(false, safe.getMinY(), Snapper.Source.ZONE));
            lines.add(new Snapper.Line(false, safe.getMaxY(), Snapper.Source.ZONE));
        }
        return lines;
    }

    /** Draws the lines found last, across a box in micrometres. */
    void show(Rectangle across) {
        shown = found;
        found = List.of();
        setBounds(across);
        setVisible(!shown.isEmpty());
        repaint();
    }

    /** The gesture ended. */
    void end() {
        found = List.of();
        shown = List.of();
        setVisible(false);
    }

    /** The lines drawn now. */
    List<Snapper.Line> shown() {
        return shown;
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return false;
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        double pixel = 1 / zoom.getAsDouble();
        graphics.setAntialias(SWT.OFF);
        for (int pass = 0; pass < 2; pass++) {
            int colour = pass == 0 ? Look.FLANK : Look.SAFE;
            graphics.setForegroundColor(new Color(colour >> 16 & 255, colour >> 8 & 255, colour & 255));
            graphics.setLineWidth(Math.max(1, (int) Math.round((pass == 0 ? FLANK_PIXELS : 1) * pixel)));
            Rectangle box = getBounds();
            for (Snapper.Line line : shown) {
                int at = Scale.um(line.at());
                if (line.upright()) {
                    graphics.drawLine(at, box.y, at, box.bottom());
                } else {
                    graphics.drawLine(box.x, at, box.right(), at);
                }
            }
        }
    }
}
