/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.figure;

import org.eclipse.draw2d.Graphics;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Pattern;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;

/**
 * Hatches that tell zones apart without colour: every line has a dark core and light flanks, so that it reads on any
 * material. The tile keeps its size in pixels whatever the zoom.
 */
public final class Hatch {

    /** How a zone is marked. */
    public enum Kind {
        /** Single strokes: wears. */
        SINGLE,
        /** Crossed strokes: does not print. */
        CROSSED
    }

    private static final int TILE = 8;
    private static final int CORE_ALPHA = 190;
    private static final int FLANK_ALPHA = 110;

    private Hatch() {
    }

    /**
     * Fills a path.
     *
     * @param graphics  in micrometres
     * @param path      in micrometres
     * @param zoom      pixels a micrometre, so that the tile stays the same
     * @param core      colour of the strokes
     */
    public static void fill(Graphics graphics, Device device, Path path, Kind kind, double zoom, RGB core) {
        Pattern pattern = pattern(device, kind, core);
        Path scaled = scaled(device, path, zoom);
        graphics.pushState();
        try {
            graphics.scale(1 / zoom);
            graphics.setBackgroundPattern(pattern);
            graphics.fillPath(scaled);
        } finally {
            graphics.popState();
            scaled.dispose();
        }
    }

    /** Tiles are made once for each window system connection, which keeps them until it ends. */
    private static Pattern pattern(Device device, Kind kind, RGB core) {
        if (!(device instanceof Display display)) {
            throw new IllegalArgumentException("hatches are drawn on the screen only");
        }
        String key = Hatch.class.getName() + kind + core;
        if (display.getData(key) instanceof Pattern known) {
            return known;
        }
        Image tile = new Image(display, tile(kind, core));
        Pattern pattern = new Pattern(display, tile);
        display.setData(key, pattern);
        display.disposeExec(() -> {
            pattern.dispose();
            tile.dispose();
        });
        return pattern;
    }

    private static Path scaled(Device device, Path path, double zoom) {
        org.eclipse.swt.graphics.PathData data = path.getPathData();
        for (int i = 0; i < data.points.length; i++) {
            data.points[i] *= (float) zoom;
        }
        return new Path(device, data);
    }

    static ImageData tile(Kind kind, RGB core) {
        ImageData data = new ImageData(TILE, TILE, 24, new PaletteData(0xff0000, 0xff00, 0xff));
        int dark = core.red << 16 | core.green << 8 | core.blue;
        for (int y = 0; y < TILE; y++) {
            for (int x = 0; x < TILE; x++) {
                int off = distance(Math.floorMod(x + y, TILE));
                if (kind == Kind.CROSSED) {
                    off = Math.min(off, distance(Math.floorMod(x - y, TILE)));
                }
                data.setPixel(x, y, off == 0 ? dark : 0xffffff);
                data.setAlpha(x, y, off == 0 ? CORE_ALPHA : off == 1 ? FLANK_ALPHA : 0);
            }
        }
        return data;
    }

    private static int distance(int phase) {
        return Math.min(phase, TILE - phase);
    }

    /** Outlines a path with a line of one or two pixels, solid or dashed, dark with a light flank. */
    public static void outline(Graphics graphics, Path path, double zoom, Color dark, Color light, boolean dashed) {
        graphics.pushState();
        graphics.setAntialias(SWT.ON);
        graphics.setForegroundColor(light);
        graphics.setAlpha(FLANK_ALPHA);
        graphics.setLineWidth(Math.max(1, (int) Math.round(3 / zoom)));
        graphics.drawPath(path);
        graphics.setForegroundColor(dark);
        graphics.setAlpha(255);
        graphics.setLineWidth(Math.max(1, (int) Math.round(1.2 / zoom)));
        if (dashed) {
            int dash = Math.max(1, (int) Math.round(5 / zoom));
            graphics.setLineDash(new int[] {dash, dash});
        }
        graphics.drawPath(path);
        graphics.popState();
    }
}
