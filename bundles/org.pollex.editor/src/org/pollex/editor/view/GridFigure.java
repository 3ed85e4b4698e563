/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.view;

import java.util.function.DoubleSupplier;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.pollex.editor.setting.Amount;
import org.pollex.editor.setting.LengthUnit;

/**
 * Grid in mm through the middle of the item: of the step that was chosen, or as fine as can be told apart; every fifth
 * line stronger. Each line is dark
 * with a light one beside it, so that it reads on any material.
 */
public final class GridFigure extends Figure {

    private static final double[] STEPS = {0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10};
    private static final int LEAST_PIXELS = 8;
    /** Nobody places finer, mm. */
    private static final double FINEST = 0.1;
    private static final int STRONG = 110;
    private static final int FAINT = 45;

    private final DoubleSupplier zoom;

    /** @param zoom pixels a micrometre now */
    public GridFigure(DoubleSupplier zoom) {
        this.zoom = zoom;
    }

    /**
     * Distance of lines in mm at a zoom.
     *
     * @param unit   in mm; without a wish the distance is a round number of these
     * @param wished what was chosen, of which only every second, fifth or tenth line is drawn where they lie too close;
     *               0 for as fine as can be told apart
     */
    static double step(double pixelsPerMm, double unit, double wished) {
        if (wished > 0) {
            double step = wished;
            for (int i = 0; step * pixelsPerMm < LEAST_PIXELS; i++) {
                step = wished * Math.pow(10, i / 3) * new double[] {2, 5, 10}[i % 3];
            }
            return step;
        }
        for (double step : STEPS) {
            if (step * unit >= FINEST && step * unit * pixelsPerMm >= LEAST_PIXELS) {
                return step * unit;
            }
        }
        return STEPS[STEPS.length - 1] * unit;
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return false;
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        double scale = zoom.getAsDouble();
        double step = step(scale * Scale.UM, LengthUnit.chosen().millimetres(), Amount.GRID_STEP.value()) * Scale.UM;
        Rectangle box = graphics.getClip(new Rectangle()).intersect(getBounds());
        if (box.isEmpty()) {
            return;
        }
        int pixel = Math.max(1, (int) Math.round(1 / scale));
        graphics.pushState();
        graphics.setAntialias(SWT.OFF);
        graphics.setLineWidth(pixel);
        for (boolean across : new boolean[] {true, false}) {
            int from = across ? box.x : box.y;
            int to = from + (across ? box.width : box.height);
            for (long i = (long) Math.ceil(from / step); i * step <= to; i++) {
                graphics.setAlpha(Math.floorMod(i, 5L) == 0 ? STRONG : FAINT);
                int at = (int) Math.rint(i * step);
                graphics.setForegroundColor(Display.getCurrent().getSystemColor(SWT.COLOR_BLACK));
                line(graphics, box, across, at);
                graphics.setForegroundColor(Display.getCurrent().getSystemColor(SWT.COLOR_WHITE));
                line(graphics, box, across, at + pixel);
            }
        }
        graphics.popState();
    }

    private static void line(Graphics graphics, Rectangle box, boolean across, int at) {
        if (across) {
            graphics.drawLine(at, box.y, at, box.y + box.height);
        } else {
            graphics.drawLine(box.x, at, box.x + box.width, at);
        }
    }
}
