/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures;

import java.util.Arrays;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.locationtech.jts.geom.Coordinate;
import org.pollex.print.wear.WornSample;
import org.pollex.ui.photo.PhotoCanvas;

/**
 * A photograph of a worn sample in which four places are marked one after another: the left and the right edge of the
 * item where it is widest, its tip, and where half of the ink is gone. A mark can be dragged to a better place. The
 * width of the item is the scale. Nothing of the photograph is kept.
 */
public final class SamplePhoto extends PhotoCanvas {

    private static final int NEAR = 12;
    private static final String[] PLACES = {"left edge of the item where it is widest",
        "right edge of the item where it is widest", "tip", "place where half of the ink is gone"};

    private final double wide;
    private final Consumer<OptionalDouble> measured;
    private final Coordinate[] marks = new Coordinate[PLACES.length];
    private int dragged = -1;
    private String unfit = "";

    /**
     * @param wide      width of the item, mm
     * @param measured  told the distance from the tip whenever it changes; empty while places are missing
     */
    SamplePhoto(Composite parent, double wide, Consumer<OptionalDouble> measured) {
        super(parent, "Photograph of a worn sample");
        this.wide = wide;
        this.measured = measured;
        addListener(SWT.MouseDown, event -> down(event.x, event.y));
        addListener(SWT.MouseMove, event -> {
            if (dragged >= 0) {
                mark(dragged, event.x, event.y);
            }
        });
        addListener(SWT.MouseUp, event -> dragged = -1);
    }

    @Override
    protected void opened() {
        Arrays.fill(marks, null);
        dragged = -1;
        unfit = "";
        measured.accept(OptionalDouble.empty());
    }

    @Override
    protected String begin() {
        return "Open a photograph taken straight from above, or type the distance.";
    }

    @Override
    protected String next() {
        for (int i = 0; i < PLACES.length; i++) {
            if (marks[i] == null) {
                return "Click the " + PLACES[i] + ".";
            }
        }
        return unfit.isEmpty() ? "Drag a cross to correct it." : unfit;
    }

    private void down(int x, int y) {
        if (!isShown()) {
            return;
        }
        dragged = -1;
        for (int i = 0; i < marks.length; i++) {
            Point at = marks[i] == null ? null : at(marks[i].x, marks[i].y);
            if (at != null && Math.hypot(at.x - x, at.y - y) < NEAR) {
                dragged = i;
                return;
            }
        }
        for (int i = 0; i < marks.length; i++) {
            if (marks[i] == null) {
                mark(i, x, y);
                return;
            }
        }
    }

    private void mark(int i, int x, int y) {
        marks[i] = place(x, y);
        measured.accept(distance());
        redraw();
    }

    private OptionalDouble distance() {
        unfit = "";
        if (Arrays.stream(marks).anyMatch(Objects::isNull)) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(WornSample.measured(marks[0], marks[1], wide, marks[2], marks[3]));
        } catch (IllegalArgumentException e) {
            unfit = e.getMessage();
            return OptionalDouble.empty();
        }
    }

    @Override
    protected void marks(GC gc) {
        for (int i = 0; i < marks.length; i += 2) {
            if (marks[i] != null && marks[i + 1] != null) {
                line(gc, marks[i], marks[i + 1]);
            }
        }
        for (Coordinate mark : marks) {
            if (mark != null) {
                cross(gc, mark);
            }
        }
    }
}
