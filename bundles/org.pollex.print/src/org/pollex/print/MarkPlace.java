/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.awt.geom.AffineTransform;
import org.pollex.model.design.Mark;

/**
 * Where a mark lies on the item: mirrored left to right, scaled, turned clockwise on screen and moved, in this order,
 * about its own middle.
 */
public final class MarkPlace {

    private MarkPlace() {
    }

    /**
     * From the mark's own coordinates to mm on the item.
     *
     * @param middleX  middle of the mark in its own coordinates: of the page of art, of the box of letters
     * @param middleY  the same, downwards
     * @throws PrintException when the scale is not above 0 or a number is not finite
     */
    public static AffineTransform of(Mark mark, double middleX, double middleY) throws PrintException {
        double scale = mark.getScale();
        if (!(scale > 0) || !Double.isFinite(scale)) {
            throw new PrintException("Mark " + label(mark) + " has the scale " + scale
                    + "; give it a scale above 0.");
        }
        if (!Double.isFinite(mark.getX()) || !Double.isFinite(mark.getY()) || !Double.isFinite(mark.getTurn())) {
            throw new PrintException("Mark " + label(mark) + " has no place; give it finite x, y and turn.");
        }
        AffineTransform place = AffineTransform.getTranslateInstance(mark.getX(), mark.getY());
        place.concatenate(turn(mark.getTurn()));
        place.scale(mark.isMirror() ? -scale : scale, scale);
        place.translate(-middleX, -middleY);
        return place;
    }

    /** Exact for quarter turns. */
    private static AffineTransform turn(double degrees) {
        double quarters = degrees / 90;
        if (quarters == Math.rint(quarters)) {
            return AffineTransform.getQuadrantRotateInstance((int) (quarters % 4));
        }
        return AffineTransform.getRotateInstance(Math.toRadians(degrees));
    }

    /** How people know the mark: by its name, else by its id. */
    static String label(Mark mark) {
        String name = text(mark.getName());
        return name.isEmpty() ? text(mark.getId()) : name;
    }

    static String text(String value) {
        return value == null ? "" : value;
    }
}
