/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.ArrayList;
import java.util.List;
import org.pollex.geometry.placement.Fit;
import org.pollex.geometry.shape.Hull;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Side;

/**
 * How everything printed on a side, as one piece, would lie as large as it can in the safe zone. A place p of the
 * present print comes to lie at {@code scale R(turn) p + (dx, dy)}.
 *
 * @param side   name of the face
 * @param fit    scale as a factor on the present size, turn added to the present one, move in mm, contacts in mm
 * @param share  area of the hull of the print when so placed, over the area of the safe zone
 * @param safe   area of the safe zone, mm2
 */
public record SideFit(String side, Fit fit, double share, double safe) {

    /**
     * Where a mark comes to lie.
     *
     * @param mark   the mark, unchanged
     * @param x      new place, mm
     * @param y      new place, mm
     * @param scale  new scale
     * @param turn   new turn in degrees, in (-180, 180]
     */
    public record Moved(Mark mark, double x, double y, double scale, double turn) {

        /** Writes the new place into the mark. */
        public void apply() {
            mark.setX(x);
            mark.setY(y);
            mark.setScale(scale);
            mark.setTurn(turn);
        }
    }

    static SideFit of(SideMeasures side, Fit fit) {
        double safe = side.face().safe().getArea();
        return new SideFit(side.name(), fit, Hull.of(side.printed()).area() * fit.scale() * fit.scale() / safe, safe);
    }

    /** Where all marks of that side of the design come to lie, hidden ones included, so that they stay in step. */
    public List<Moved> moved(Side designed) {
        double cos = Math.cos(Math.toRadians(fit.turn())) * fit.scale();
        double sin = Math.sin(Math.toRadians(fit.turn())) * fit.scale();
        List<Moved> moved = new ArrayList<>();
        for (Layer layer : designed.getLayers()) {
            for (Mark mark : layer.getMarks()) {
                double turn = mark.getTurn() + fit.turn();
                moved.add(new Moved(mark, cos * mark.getX() - sin * mark.getY() + fit.dx(),
                        sin * mark.getX() + cos * mark.getY() + fit.dy(), mark.getScale() * fit.scale(),
                        turn - 360 * Math.ceil((turn - 180) / 360)));
            }
        }
        return moved;
    }
}
