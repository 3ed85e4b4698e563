/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.view;

import java.beans.PropertyChangeListener;
import java.util.Locale;
import java.util.Set;
import org.eclipse.draw2d.Viewport;
import org.eclipse.gef.editparts.ZoomListener;
import org.eclipse.gef.editparts.ZoomManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.pollex.editor.setting.Choices;
import org.pollex.editor.setting.LengthUnit;

/** A ruler in the unit chosen, along one edge of the drawing surface; zero is the middle of the item. */
public final class RulerCanvas extends Canvas {

    /** Thickness in pixels. */
    public static final int THICKNESS = 20;

    private static final int LABEL_ROOM = 44;
    private static final double[] STEPS = {0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100};

    private final boolean across;
    private final ZoomManager zoom;
    private LengthUnit unit = LengthUnit.chosen();

    /** @param across along the top edge; else down the left edge */
    public RulerCanvas(Composite parent, boolean across, ZoomManager zoom) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.across = across;
        this.zoom = zoom;
        ZoomListener zoomed = value -> redrawSoon();
        PropertyChangeListener scrolled = event -> redrawSoon();
        Viewport viewport = zoom.getViewport();
        zoom.addZoomListener(zoomed);
        viewport.addPropertyChangeListener(Viewport.PROPERTY_VIEW_LOCATION, scrolled);
        addPaintListener(event -> paint(event.gc));
        Runnable units = Choices.follow(Set.of(LengthUnit.KEY), () -> {
            unit = LengthUnit.chosen();
            redrawSoon();
        });
        addDisposeListener(event -> {
            units.run();
            zoom.removeZoomListener(zoomed);
            viewport.removePropertyChangeListener(Viewport.PROPERTY_VIEW_LOCATION, scrolled);
        });
        getAccessible().addAccessibleListener(new org.eclipse.swt.accessibility.AccessibleAdapter() {
            @Override
            public void getName(org.eclipse.swt.accessibility.AccessibleEvent event) {
                event.result = (across ? "Ruler across, " : "Ruler down, ") + unit.label();
            }
        });
    }

    private void redrawSoon() {
        if (!isDisposed()) {
            redraw();
        }
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(across ? wHint : THICKNESS, across ? THICKNESS : hHint);
    }

    private void paint(GC gc) {
        double pixels = zoom.getZoom() * Scale.UM * unit.millimetres();
        double step = step(pixels);
        int end = across ? getClientArea().width : getClientArea().height;
        int start = across ? zoom.getViewport().getViewLocation().x : zoom.getViewport().getViewLocation().y;
        gc.setForeground(getForeground());
        gc.setAntialias(SWT.OFF);
        long first = (long) Math.floor(start / pixels / step * 5);
        for (long i = first;; i++) {
            double length = i * step / 5;
            int at = (int) Math.rint(length * pixels) - start;
            if (at > end) {
                break;
            }
            boolean major = Math.floorMod(i, 5L) == 0;
            tick(gc, at, major ? THICKNESS / 2 : THICKNESS / 5);
            if (major) {
                label(gc, at, text(length, step));
            }
        }
        gc.setAlpha(120);
        gc.drawLine(across ? 0 : THICKNESS - 1, across ? THICKNESS - 1 : 0, across ? end : THICKNESS - 1,
                across ? THICKNESS - 1 : end);
    }

    /** Distance of labels in the unit, at so many pixels a unit. */
    static double step(double pixels) {
        for (double step : STEPS) {
            if (step * pixels >= LABEL_ROOM) {
                return step;
            }
        }
        return STEPS[STEPS.length - 1];
    }

    /** A label with as many decimals as its step needs. */
    static String text(double length, double step) {
        int decimals = step >= 1 ? 0 : step >= 0.1 ? 1 : step >= 0.01 ? 2 : 3;
        double digits = Math.pow(10, decimals);
        return String.format(Locale.ROOT, "%." + decimals + "f", Math.rint(length * digits) / digits + 0.0);
    }

    private void tick(GC gc, int at, int size) {
        if (across) {
            gc.drawLine(at, THICKNESS - size, at, THICKNESS);
        } else {
            gc.drawLine(THICKNESS - size, at, THICKNESS, at);
        }
    }

    private void label(GC gc, int at, String text) {
        if (across) {
            gc.drawText(text, at + 2, -1, true);
            return;
        }
        org.eclipse.swt.graphics.Transform turned = new org.eclipse.swt.graphics.Transform(getDisplay());
        turned.translate(0, at - 2);
        turned.rotate(-90);
        gc.setTransform(turned);
        gc.drawText(text, 0, -1, true);
        gc.setTransform(null);
        turned.dispose();
    }
}
