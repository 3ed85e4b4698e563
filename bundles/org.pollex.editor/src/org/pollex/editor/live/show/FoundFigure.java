/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.pollex.editor.figure.ItemFigure;
import org.pollex.editor.figure.Paths;
import org.pollex.editor.setting.LeastShown;
import org.pollex.editor.view.Scale;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;

/**
 * Findings of the last check at their places: errors solid, what is milder dashed, as far down as was chosen.
 * What concerns a whole side is not drawn.
 */
final class FoundFigure extends Figure {

    private static final double WHOLE = 0.2;
    private static final double DOT = 0.35;

    private record Drawn(Path path, RGB tone, boolean dashed, Geometry line, String message) {
    }

    private final java.util.function.DoubleSupplier zoom;
    private final List<Drawn> drawn = new ArrayList<>();

    FoundFigure(java.util.function.DoubleSupplier zoom) {
        this.zoom = zoom;
    }

    /** Shows findings of a face whose item has that box. */
    void show(List<Finding> findings, Envelope item) {
        dispose();
        for (Finding each : findings) {
            Geometry where = each.where();
            if (each.waived() || where.isEmpty() || !LeastShown.shows(each.severity())
                    || where.getEnvelopeInternal().getArea() > WHOLE * item.getArea()) {
                continue;
            }
            Geometry line = where instanceof Point ? where.buffer(DOT, 4) : where;
            drawn.add(new Drawn(Paths.of(Display.getCurrent(), line),
                    each.severity() == Severity.ERROR ? Tone.ERROR : Tone.WARNING,
                    each.severity() != Severity.ERROR, line, each.message()));
        }
        Rectangle box = ItemFigure.box(item).expand(Scale.um(20), Scale.um(20));
        if (box.equals(getBounds())) {
            repaint();
        } else {
            setBounds(box);
        }
    }

    /** How many places are drawn. */
    int count() {
        return drawn.size();
    }

    /** What was found nearest to a place, at most so far from it, mm. */
    Optional<String> at(double x, double y, double far) {
        Envelope around = new Envelope(new Coordinate(x, y));
        around.expandBy(far);
        Point place = new GeometryFactory().createPoint(new Coordinate(x, y));
        String nearest = null;
        double least = far;
        for (Drawn each : drawn) {
            if (around.intersects(each.line().getEnvelopeInternal())) {
                double distance = each.line().distance(place);
                if (nearest == null ? distance <= least : distance < least) {
                    nearest = each.message();
                    least = distance;
                }
            }
        }
        return Optional.ofNullable(nearest);
    }

    void dispose() {
        drawn.forEach(each -> each.path().dispose());
        drawn.clear();
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return false;
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        graphics.setAntialias(SWT.ON);
        double px = 1 / zoom.getAsDouble();
        int dash = Math.max(1, (int) Math.round(4 * px));
        for (Drawn each : drawn) {
            graphics.setLineStyle(SWT.LINE_SOLID);
            graphics.setForegroundColor(Display.getCurrent().getSystemColor(SWT.COLOR_WHITE));
            graphics.setLineWidth(Math.max(1, (int) Math.round(4 * px)));
            graphics.drawPath(each.path());
            graphics.setForegroundColor(new Color(each.tone()));
            graphics.setLineWidth(Math.max(1, (int) Math.round(2 * px)));
            if (each.dashed()) {
                graphics.setLineDash(new int[] {dash, dash});
            }
            graphics.drawPath(each.path());
        }
    }
}
