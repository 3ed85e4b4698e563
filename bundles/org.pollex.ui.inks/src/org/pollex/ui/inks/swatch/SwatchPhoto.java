/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks.swatch;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.locationtech.jts.geom.Coordinate;
import org.pollex.print.stock.SwatchShot.Box;
import org.pollex.ui.photo.PhotoCanvas;

/**
 * A photograph of a stock in which are marked: the part that shows the stock, a patch of grey, and two points whose
 * distance is known. The mouse draws, moves and sizes; the arrow keys move what was touched last by a pixel, ten with
 * Shift, and size it with Ctrl.
 */
final class SwatchPhoto extends PhotoCanvas {

    /** What the mouse and the keys are for. */
    enum Tool {
        /** The part that shows the stock. */
        CROP,
        /** The grey patch. */
        GREY,
        /** Two points. */
        POINTS
    }

    private static final int NEAR = 7;
    private static final int FAR_STEP = 10;
    private static final int DIM = 130;
    /** Side of the patch that a click makes: this share of the shorter side of the photograph. */
    private static final double PATCH = 0.04;
    private static final int PATCH_LEAST = 6;

    private final Runnable changed;
    private final Runnable another;
    private final Map<Tool, Box> boxes = new EnumMap<>(Tool.class);
    private final Coordinate[] points = new Coordinate[2];
    private Tool tool = Tool.CROP;
    private BoxGrip grip;
    private boolean moved;
    private int point = -1;
    private boolean dragging;

    /**
     * @param changed  runs when something is marked otherwise
     * @param another  runs when another photograph is shown, or none
     */
    SwatchPhoto(Composite parent, Runnable changed, Runnable another) {
        super(parent, "Photograph of a stock");
        this.changed = changed;
        this.another = another;
        addListener(SWT.MouseDown, this::down);
        addListener(SWT.MouseMove, this::move);
        addListener(SWT.MouseUp, this::up);
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.Traverse, event -> {
            boolean arrow = event.detail == SWT.TRAVERSE_ARROW_NEXT || event.detail == SWT.TRAVERSE_ARROW_PREVIOUS;
            event.doit = !arrow;
        });
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
    }

    void tool(Tool chosen) {
        tool = chosen;
        redraw();
    }

    /** The box of a tool; empty when there is none. */
    Optional<Box> box(Tool of) {
        return Optional.ofNullable(boxes.get(of));
    }

    /** Takes a box, or takes it away, without telling of it. */
    void box(Tool of, Optional<Box> box) {
        box.ifPresentOrElse(each -> boxes.put(of, each), () -> boxes.remove(of));
        redraw();
    }

    /** One of the two points, pixels; empty while it is not set. */
    Optional<Coordinate> point(int index) {
        return Optional.ofNullable(points[index]);
    }

    /** Takes a point without telling of it. */
    void point(int index, Coordinate at) {
        points[index] = at;
        point = index;
        redraw();
    }

    /** Distance of the points, pixels; empty while one is missing or both are one. */
    OptionalDouble between() {
        double distance = points[0] == null || points[1] == null ? 0 : points[0].distance(points[1]);
        return distance > 0 ? OptionalDouble.of(distance) : OptionalDouble.empty();
    }

    @Override
    protected void opened() {
        boxes.clear();
        points[0] = null;
        points[1] = null;
        point = -1;
        grip = null;
        dragging = false;
        another.run();
    }

    @Override
    protected String begin() {
        return "Open a photograph of the stock, or drop one here: taken straight from above, in even light.";
    }

    @Override
    protected String next() {
        return switch (tool) {
            case CROP -> boxes.containsKey(Tool.CROP) ? "Drag the box or its edges; arrow keys move it."
                    : "Drag a box over the part that shows only the stock.";
            case GREY -> boxes.containsKey(Tool.GREY) ? "Drag the patch or its edges; arrow keys move it."
                    : "Click the grey card in the photograph.";
            case POINTS -> points[0] == null ? "Click one of two points whose distance you know."
                    : points[1] == null ? "Click the other point." : "Drag a cross to correct it; arrow keys move it.";
        };
    }

    private void down(Event event) {
        forceFocus();
        if (!isShown() || event.button != 1) {
            return;
        }
        Coordinate at = place(event.x, event.y);
        dragging = true;
        moved = false;
        if (tool == Tool.POINTS) {
            point = nearest(event.x, event.y);
            if (point < 0) {
                point = points[0] == null ? 0 : points[1] == null ? 1 : -1;
            }
            if (point >= 0) {
                set(at);
            }
        } else {
            grip = BoxGrip.at(pixelsAcross(), pixelsDown(), at.x, at.y, box(tool), NEAR / zoom());
        }
    }

    private int nearest(int x, int y) {
        int found = -1;
        double least = 2 * NEAR;
        for (int i = 0; i < points.length; i++) {
            if (points[i] != null) {
                Point there = at(points[i].x, points[i].y);
                double distance = Math.hypot(there.x - x, there.y - y);
                if (distance < least) {
                    least = distance;
                    found = i;
                }
            }
        }
        return found;
    }

    private void move(Event event) {
        if (!dragging) {
            return;
        }
        Coordinate at = place(event.x, event.y);
        if (tool == Tool.POINTS && point >= 0) {
            set(at);
        } else if (grip != null) {
            moved = true;
            take(grip.to(at.x, at.y));
        }
    }

    private void up(Event event) {
        if (dragging && grip != null && !moved && grip.draws() && tool == Tool.GREY) {
            Coordinate at = place(event.x, event.y);
            int side = Math.max(PATCH_LEAST, (int) Math.rint(PATCH * Math.min(pixelsAcross(), pixelsDown())));
            take(BoxGrip.round(pixelsAcross(), pixelsDown(), at.x, at.y, side));
        }
        dragging = false;
        grip = null;
    }

    private void key(Event event) {
        int step = (event.stateMask & SWT.SHIFT) != 0 ? FAR_STEP : 1;
        int dx = event.keyCode == SWT.ARROW_LEFT ? -step : event.keyCode == SWT.ARROW_RIGHT ? step : 0;
        int dy = event.keyCode == SWT.ARROW_UP ? -step : event.keyCode == SWT.ARROW_DOWN ? step : 0;
        if (!isShown() || dx == 0 && dy == 0) {
            return;
        }
        if (tool == Tool.POINTS && point >= 0) {
            set(new Coordinate(points[point].x + dx, points[point].y + dy));
        } else if (boxes.containsKey(tool)) {
            take(BoxGrip.stepped(boxes.get(tool), pixelsAcross(), pixelsDown(), dx, dy,
                    (event.stateMask & SWT.MOD1) != 0));
        }
    }

    private void set(Coordinate at) {
        points[point] = new Coordinate(Math.max(0, Math.min(pixelsAcross(), at.x)),
                Math.max(0, Math.min(pixelsDown(), at.y)));
        redraw();
        changed.run();
    }

    private void take(Box box) {
        boxes.put(tool, box);
        redraw();
        changed.run();
    }

    @Override
    protected void marks(GC gc) {
        box(Tool.CROP).ifPresent(box -> {
            if (tool == Tool.CROP) {
                dim(gc, rectangle(box));
            }
            frame(gc, box);
        });
        box(Tool.GREY).ifPresent(box -> frame(gc, box));
        if (points[0] != null && points[1] != null) {
            line(gc, points[0], points[1]);
        }
        for (Coordinate each : points) {
            if (each != null) {
                cross(gc, each);
            }
        }
    }

    /** What is cut off is dark, while it is about that. */
    private void dim(GC gc, Rectangle inner) {
        Point from = at(0, 0);
        Point to = at(pixelsAcross(), pixelsDown());
        gc.setAlpha(DIM);
        gc.setBackground(getDisplay().getSystemColor(SWT.COLOR_BLACK));
        gc.fillRectangle(from.x, from.y, to.x - from.x, inner.y - from.y);
        gc.fillRectangle(from.x, inner.y + inner.height, to.x - from.x, to.y - inner.y - inner.height);
        gc.fillRectangle(from.x, inner.y, inner.x - from.x, inner.height);
        gc.fillRectangle(inner.x + inner.width, inner.y, to.x - inner.x - inner.width, inner.height);
        gc.setAlpha(255);
    }

    private Rectangle rectangle(Box box) {
        Point from = at(box.x(), box.y());
        Point to = at(box.x() + (double) box.width(), box.y() + (double) box.height());
        return new Rectangle(from.x, from.y, to.x - from.x, to.y - from.y);
    }

    private void frame(GC gc, Box box) {
        Coordinate[] corners = {new Coordinate(box.x(), box.y()), new Coordinate(box.x() + box.width(), box.y()),
            new Coordinate(box.x() + box.width(), box.y() + box.height()),
            new Coordinate(box.x(), box.y() + box.height())};
        for (int i = 0; i < corners.length; i++) {
            line(gc, corners[i], corners[(i + 1) % corners.length]);
        }
    }
}
