/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.figure;

import java.util.function.Consumer;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Display;
import org.pollex.edit.Pose;
import org.pollex.editor.view.Scale;

/**
 * The areas of a mark as pixels, kept while the mark is dragged without being scaled or turned: filling paths with
 * thousands of corners at every step takes longer than showing their picture.
 */
final class AreasPicture {

    /** Larger pictures cost more to show than paths do, of which only what is in the window is filled. */
    private static final double MOST_PIXELS = 600_000;
    private static final int EDGE = 2;
    private static final int PLAIN = 100;
    /** Zooms that differ by rounding only. */
    private static final double NEAR = 1e-6;

    private Image image;
    private Pose pose;
    private double zoom;
    private int left;
    private int top;

    /**
     * Draws the picture, when the one that is there does not show the mark at this pose but for its place.
     *
     * @param box    of the mark at the pose, micrometres
     * @param shown  zoom, pixels a micrometre
     * @param fill   fills the areas with a GC that takes the mark's own micrometres
     * @return whether there is a picture; not when it would be too large, nor on screens that enlarge what is
     *         drawn
     */
    boolean ready(Pose at, org.eclipse.draw2d.geometry.Rectangle box, double shown, Consumer<GC> fill) {
        if (image != null && Math.abs(zoom - shown) <= NEAR * shown
                && pose.equals(new Pose(pose.x(), pose.y(), at.scale(), at.turn(), at.mirror()))) {
            return true;
        }
        dispose();
        int width = (int) Math.ceil(box.width * shown) + 2 * EDGE;
        int height = (int) Math.ceil(box.height * shown) + 2 * EDGE;
        if ((double) width * height > MOST_PIXELS
                || Display.getCurrent().getPrimaryMonitor().getZoom() != PLAIN) {
            return false;
        }
        ImageData clear = new ImageData(width, height, 24, new PaletteData(0xff0000, 0xff00, 0xff));
        clear.alphaData = new byte[width * height];
        image = new Image(Display.getCurrent(), clear);
        pose = at;
        zoom = shown;
        left = (int) Math.floor((box.x - at.x() * Scale.UM) * shown) - EDGE;
        top = (int) Math.floor((box.y - at.y() * Scale.UM) * shown) - EDGE;
        GC gc = new GC(image);
        Transform all = new Transform(image.getDevice());
        all.translate(-left, -top);
        all.scale((float) shown, (float) shown);
        all.rotate((float) at.turn());
        all.scale((float) (at.mirror() ? -at.scale() : at.scale()), (float) at.scale());
        gc.setTransform(all);
        gc.setAntialias(SWT.ON);
        fill.accept(gc);
        gc.setTransform(null);
        all.dispose();
        gc.dispose();
        return true;
    }

    /**
     * Shows the picture on the whole pixels that are nearest, where it is shown as it is.
     *
     * @param onItem  in micrometres on the item, on which the figure is drawn
     */
    void paint(Graphics onItem, IFigure figure, Pose at) {
        onItem.pushState();
        WholePixels.translate(onItem, figure, at, zoom);
        onItem.scale((float) (1 / zoom));
        onItem.drawImage(image, left, top);
        onItem.popState();
    }

    void dispose() {
        if (image != null) {
            image.dispose();
            image = null;
        }
    }
}
