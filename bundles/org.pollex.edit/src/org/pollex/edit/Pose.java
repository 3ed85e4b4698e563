/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.pollex.model.design.DesignPackage;
import org.pollex.model.design.Mark;

/**
 * Where a mark lies: the middle of the mark in mm, its scale, its turn in degrees clockwise on screen, and whether it
 * is flipped left to right before it is turned.
 */
public record Pose(double x, double y, double scale, double turn, boolean mirror) {

    public Pose {
        if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(turn)) {
            throw new IllegalArgumentException("Place and turn must be finite numbers.");
        }
        if (!(scale > 0) || !Double.isFinite(scale)) {
            throw new IllegalArgumentException("The scale must be above 0, not " + scale + ".");
        }
    }

    /** The pose a mark has now. */
    public static Pose of(Mark mark) {
        return new Pose(mark.getX(), mark.getY(), mark.getScale(), mark.getTurn(), mark.isMirror());
    }

    /** Shifted by millimetres. */
    public Pose moved(double dx, double dy) {
        return new Pose(x + dx, y + dy, scale, turn, mirror);
    }

    /** Scaled by a factor about a fixed point. */
    public Pose scaledAbout(double factor, double aboutX, double aboutY) {
        return new Pose(aboutX + (x - aboutX) * factor, aboutY + (y - aboutY) * factor, scale * factor, turn, mirror);
    }

    /** Turned by degrees, clockwise on screen, about a fixed point; the turn stays between -180 and 180. */
    public Pose turnedAbout(double degrees, double aboutX, double aboutY) {
        double radians = Math.toRadians(degrees);
        double cos = Math.cos(radians);
        double sin = Math.sin(radians);
        double px = x - aboutX;
        double py = y - aboutY;
        return new Pose(aboutX + px * cos - py * sin, aboutY + px * sin + py * cos, scale,
                normal(turn + degrees), mirror);
    }

    /** Flipped left to right about the vertical line through {@code aboutX}. */
    public Pose mirroredAbout(double aboutX) {
        return new Pose(2 * aboutX - x, y, scale, normal(-turn), !mirror);
    }

    private static double normal(double degrees) {
        double rest = Math.IEEEremainder(degrees, 360);
        return rest == 0 ? 0 : rest;
    }

    Map<EStructuralFeature, Object> features() {
        Map<EStructuralFeature, Object> values = new LinkedHashMap<>();
        values.put(DesignPackage.Literals.MARK__X, x);
        values.put(DesignPackage.Literals.MARK__Y, y);
        values.put(DesignPackage.Literals.MARK__SCALE, scale);
        values.put(DesignPackage.Literals.MARK__TURN, turn);
        values.put(DesignPackage.Literals.MARK__MIRROR, mirror);
        return values;
    }
}
