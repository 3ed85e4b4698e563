/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.guide;

import java.util.Optional;
import java.util.function.DoubleSupplier;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Display;
import org.pollex.editor.look.Look;
import org.pollex.editor.setting.LengthUnit;
import org.pollex.editor.snap.Snapper;
import org.pollex.editor.view.Scale;
import org.pollex.model.design.Guide;

/** Draws the guides of a face: each a dark line between light ones, the chosen one stronger. */
public final class GuideLines extends Figure {

    private static final int CORE = 1;
    private static final int FLANK = 3;
    private static final int STRONG = 2;
    private static final int BESIDE = 14;
    private static final int INSET = 3;

    private final Guides guides;
    private final DoubleSupplier zoom;
    private Optional<Guide> moved = Optional.empty();
    private Optional<Snapper.Line> dragged = Optional.empty();
    private Point pointer = new Point();

    /** @param zoom pixels a micrometre now */
    public GuideLines(Guides guides, DoubleSupplier zoom) {
        this.guides = guides;
        this.zoom = zoom;
        guides.onChosen(this::repaint);
    }

    /**
     * Shows a line that is being dragged, in place of the guide it was, and its place in numbers.
     *
     * @param beside where the pointer is, micrometres
     */
    void drag(Optional<Guide> was, Optional<Snapper.Line> line, Point beside) {
        moved = was;
        dragged = line;
        pointer = beside;
        repaint();
    }

    /** The line being dragged; empty when none is. */
    public Optional<Snapper.Line> dragged() {
        return dragged;
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return false;
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        graphics.setAntialias(SWT.OFF);
        for (Guide each : guides.all()) {
            if (moved.filter(guide -> guide == each).isEmpty()) {
                line(graphics, Guides.line(each), guides.chosen().filter(guide -> guide == each).isPresent());
            }
        }
        dragged.ifPresent(each -> {
            line(graphics, each, true);
            number(graphics, each);
        });
    }

    /** Drawn in pixels, whatever the zoom. */
    private void number(Graphics graphics, Snapper.Line line) {
        LengthUnit unit = LengthUnit.chosen();
        TextLayout text = new TextLayout(Display.getCurrent());
        text.setText((line.upright() ? "x " : "y ") + unit.show(line.at()) + " " + unit.label());
        int width = text.getBounds().width + 2 * INSET;
        int height = text.getBounds().height + 2 * INSET;
        graphics.pushState();
        graphics.translate((float) pointer.x, (float) pointer.y);
        graphics.scale(1 / zoom.getAsDouble());
        graphics.setBackgroundColor(colour(Look.FLANK));
        graphics.setForegroundColor(colour(Look.GUIDE));
        graphics.setLineWidth(1);
        graphics.fillRectangle(BESIDE, BESIDE, width, height);
        graphics.drawRectangle(BESIDE, BESIDE, width, height);
        graphics.drawTextLayout(text, BESIDE + INSET, BESIDE + INSET);
        graphics.popState();
        text.dispose();
    }

    private static Color colour(int rgb) {
        return new Color(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255);
    }

    private void line(Graphics graphics, Snapper.Line line, boolean strong) {
        double pixel = 1 / zoom.getAsDouble();
        Rectangle box = getBounds();
        int at = Scale.um(line.at());
        for (boolean core : new boolean[] {false, true}) {
            graphics.setForegroundColor(colour(core ? Look.GUIDE : Look.FLANK));
            int width = (core ? CORE : FLANK) + (strong ? STRONG : 0);
            graphics.setLineWidth(Math.max(1, (int) Math.round(width * pixel)));
            if (line.upright()) {
                graphics.drawLine(at, box.y, at, box.bottom());
            } else {
                graphics.drawLine(box.x, at, box.right(), at);
            }
        }
    }
}
