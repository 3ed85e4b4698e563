/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.figure;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.PrecisionPoint;
import org.pollex.edit.Pose;
import org.pollex.editor.view.Scale;

/** Pictures are drawn as they are on whole pixels of the window; elsewhere they are blurred. */
public final class WholePixels {

    private WholePixels() {
    }

    /**
     * Moves the origin to the middle of a mark, on the nearest whole pixel.
     *
     * @param onItem  in micrometres on the item, on which the figure is drawn
     * @param zoom    pixels a micrometre
     */
    public static void translate(Graphics onItem, IFigure figure, Pose pose, double zoom) {
        PrecisionPoint middle = new PrecisionPoint(pose.x() * Scale.UM, pose.y() * Scale.UM);
        figure.translateToAbsolute(middle);
        onItem.translate((float) (pose.x() * Scale.UM + (Math.rint(middle.preciseX) - middle.preciseX) / zoom),
                (float) (pose.y() * Scale.UM + (Math.rint(middle.preciseY) - middle.preciseY) / zoom));
    }
}
