/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.guide;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.editparts.ZoomManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Cursor;
import org.locationtech.jts.geom.Envelope;
import org.pollex.editor.setting.Amount;
import org.pollex.editor.snap.Snapper;
import org.pollex.editor.view.Scale;
import org.pollex.model.design.Guide;

/**
 * One gesture with a guide: drawn out of a ruler it makes one, over the drawing it moves one, let go outside the
 * drawing it removes it. Places are pixels of the drawing surface. While Alt is held the guide does not keep to the
 * middle of the item and the edges of its zones.
 */
public final class GuideDrag {

    private static final int GRAB_PIXELS = 3;
    private static final int STILL_PIXELS = 2;

    private final Guides guides;
    private final GuideLines figure;
    private final FigureCanvas canvas;
    private final ZoomManager zoom;
    private final Supplier<List<Snapper.Line>> edges;
    private final Runnable reveal;
    private Optional<Guide> held = Optional.empty();
    private boolean upright;
    private boolean lasting;
    private boolean moved;
    private Point start = new Point();

    /**
     * Gestures on one drawing surface.
     *
     * @param edges  lines of the item that a guide keeps to
     * @param reveal shows guides that are hidden, called before a new one is drawn
     */
    public GuideDrag(Guides guides, GuideLines figure, FigureCanvas canvas, ZoomManager zoom,
            Supplier<List<Snapper.Line>> edges, Runnable reveal) {
        this.guides = guides;
        this.figure = figure;
        this.canvas = canvas;
        this.zoom = zoom;
        this.edges = edges;
        this.reveal = reveal;
    }

    /** The guides that gestures change. */
    public Guides guides() {
        return guides;
    }

    private Optional<Guide> under(int x, int y) {
        return figure.isVisible() ? guides.near(mm(x, true), mm(y, false), GRAB_PIXELS / pixelsPerMm())
                : Optional.empty();
    }

    /** The cursor over a guide; empty beside them all. */
    public Optional<Cursor> cursor(int x, int y) {
        return under(x, y).map(each -> canvas.getDisplay().getSystemCursor(each.isUpright() ? SWT.CURSOR_SIZEWE
                : SWT.CURSOR_SIZENS));
    }

    /** Takes hold of the guide at a place and chooses it; chooses none when there is none. */
    public boolean grab(int x, int y) {
        Optional<Guide> found = under(x, y);
        guides.choose(found);
        found.ifPresent(each -> begin(found, each.isUpright(), x, y));
        return found.isPresent();
    }

    /** A guide is drawn out of a ruler. */
    void begin(boolean newUpright, int x, int y) {
        guides.choose(Optional.empty());
        begin(Optional.empty(), newUpright, x, y);
    }

    private void begin(Optional<Guide> guide, boolean isUpright, int x, int y) {
        held = guide;
        upright = isUpright;
        lasting = true;
        moved = false;
        start = new Point(x, y);
    }

    /** Whether a gesture lasts. */
    public boolean lasts() {
        return lasting;
    }

    /** The pointer moved. */
    public void drag(int x, int y, boolean freely) {
        if (!lasting || !guides.open()) {
            return;
        }
        moved |= Math.abs(upright ? x - start.x : y - start.y) > STILL_PIXELS;
        if (moved) {
            if (!figure.isVisible()) {
                reveal.run();
            }
            figure.drag(held, outside(x, y) ? Optional.empty()
                    : Optional.of(new Snapper.Line(upright, place(x, y, freely), Snapper.Source.GUIDE)),
                    new Point(Scale.um(mm(x, true)), Scale.um(mm(y, false))));
        }
    }

    /** The pointer let go. */
    public void drop(int x, int y, boolean freely) {
        if (!lasting) {
            return;
        }
        Optional<Guide> guide = held;
        boolean change = moved && guides.open();
        cancel();
        if (!change) {
            return;
        }
        if (outside(x, y)) {
            guide.ifPresent(guides::delete);
        } else {
            double at = place(x, y, freely);
            guide.ifPresentOrElse(each -> guides.move(each, at), () -> guides.add(upright, at));
        }
    }

    /** Ends the gesture; nothing changes. */
    public void cancel() {
        lasting = false;
        held = Optional.empty();
        figure.drag(Optional.empty(), Optional.empty(), new Point());
    }

    private boolean outside(int x, int y) {
        org.eclipse.swt.graphics.Rectangle area = canvas.getClientArea();
        return !area.contains(x, y);
    }

    /** In whole tenths of a millimetre, hundredths where a pixel is smaller than that; on an edge when near it. */
    private double place(int x, int y, boolean freely) {
        double wished = upright ? mm(x, true) : mm(y, false);
        Rectangle box = figure.getBounds();
        double kept = Math.max(Scale.mm(upright ? box.x : box.y), Math.min(Scale.mm(upright ? box.right()
                : box.bottom()), wished));
        if (!freely) {
            Snapper.Snap snap = Snapper.snap(new Envelope(upright ? kept : 0, upright ? kept : 0, upright ? 0 : kept,
                    upright ? 0 : kept), edges.get(), Amount.SNAP_PIXELS.value() / pixelsPerMm());
            for (Snapper.Line line : snap.lines()) {
                if (line.upright() == upright) {
                    return line.at();
                }
            }
        }
        double fine = pixelsPerMm() > 20 ? 100 : 10;
        return Math.rint(kept * fine) / fine;
    }

    private double pixelsPerMm() {
        return zoom.getZoom() * Scale.UM;
    }

    private double mm(int pixel, boolean across) {
        Point view = zoom.getViewport().getViewLocation();
        return (pixel + (across ? view.x : view.y)) / pixelsPerMm();
    }
}
