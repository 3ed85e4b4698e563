/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks.swatch;

import java.util.Optional;
import org.pollex.print.stock.SwatchShot.Box;

/**
 * A gesture on a box in a photograph, from the place where the button went down: near an edge or a corner it moves
 * that, inside it moves the box, elsewhere it draws a new one. Places count in pixels of the photograph, which a box
 * never leaves.
 */
final class BoxGrip {

    private final int wide;
    private final int tall;
    private final double x;
    private final double y;
    private final Box box;
    private final int across;
    private final int down;

    /** Edges that follow: -1 the left or upper, 1 the right or lower, 0 none; both 0 with a box moves all of it. */
    private BoxGrip(int wide, int tall, double x, double y, Box box, int across, int down) {
        this.wide = wide;
        this.tall = tall;
        this.x = x;
        this.y = y;
        this.box = box;
        this.across = across;
        this.down = down;
    }

    /**
     * Begins.
     *
     * @param wide  width of the photograph
     * @param tall  height of the photograph
     * @param box   the box that is there
     * @param near  how near an edge counts
     */
    static BoxGrip at(int wide, int tall, double x, double y, Optional<Box> box, double near) {
        if (box.isPresent()) {
            Box is = box.get();
            boolean in = x > is.x() - near && x < is.x() + is.width() + near && y > is.y() - near
                    && y < is.y() + is.height() + near;
            if (in) {
                return new BoxGrip(wide, tall, x, y, is, edge(x, is.x(), is.width(), near),
                        edge(y, is.y(), is.height(), near));
            }
        }
        return new BoxGrip(wide, tall, x, y, null, 0, 0);
    }

    private static int edge(double at, int from, int size, double near) {
        double reach = Math.min(near, size / 3.0);
        return at > from + size - reach ? 1 : at < from + reach ? -1 : 0;
    }

    /** Whether a new box is drawn. */
    boolean draws() {
        return box == null;
    }

    /** The box while the pointer is there. */
    Box to(double px, double py) {
        if (box == null) {
            return between(x, y, px, py);
        }
        int dx = (int) Math.rint(px - x);
        int dy = (int) Math.rint(py - y);
        if (across == 0 && down == 0) {
            return new Box(clamp(box.x() + dx, 0, wide - box.width()), clamp(box.y() + dy, 0, tall - box.height()),
                    box.width(), box.height());
        }
        double left = box.x() + (across < 0 ? dx : 0);
        double right = box.x() + box.width() + (across > 0 ? dx : 0);
        double top = box.y() + (down < 0 ? dy : 0);
        double bottom = box.y() + box.height() + (down > 0 ? dy : 0);
        return between(left, top, right, bottom);
    }

    private Box between(double x0, double y0, double x1, double y1) {
        int left = clamp((int) Math.rint(Math.min(x0, x1)), 0, wide - 1);
        int top = clamp((int) Math.rint(Math.min(y0, y1)), 0, tall - 1);
        int right = clamp((int) Math.rint(Math.max(x0, x1)), left + 1, wide);
        int bottom = clamp((int) Math.rint(Math.max(y0, y1)), top + 1, tall);
        return new Box(left, top, right - left, bottom - top);
    }

    /** A box moved by so much, and its right lower corner by so much more, as far as the photograph goes. */
    static Box stepped(Box box, int wide, int tall, int dx, int dy, boolean size) {
        if (size) {
            return new Box(box.x(), box.y(), clamp(box.width() + dx, 1, wide - box.x()),
                    clamp(box.height() + dy, 1, tall - box.y()));
        }
        return new Box(clamp(box.x() + dx, 0, wide - box.width()), clamp(box.y() + dy, 0, tall - box.height()),
                box.width(), box.height());
    }

    /** A square round a place. */
    static Box round(int wide, int tall, double x, double y, int side) {
        int size = Math.min(side, Math.min(wide, tall));
        return new Box(clamp((int) Math.rint(x - size / 2.0), 0, wide - size),
                clamp((int) Math.rint(y - size / 2.0), 0, tall - size), size, size);
    }

    private static int clamp(int value, int least, int most) {
        return Math.max(least, Math.min(most, value));
    }
}
