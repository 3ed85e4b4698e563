/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.util.Map;
import org.pollex.model.design.DesignPackage;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.ShapeKind;

/** Changes kind, size, line and ink of a plain shape. */
public final class EditShapeCommand extends FeatureCommand {

    /**
     * @param width      mm, above 0
     * @param height     mm, above 0
     * @param lineWidth  mm; 0 fills the shape
     * @param ink        id of the ink, or bare
     */
    public EditShapeCommand(PlainShape shape, ShapeKind kind, double width, double height, double lineWidth,
            String ink) {
        super("Edit shape", shape, Map.of(
                DesignPackage.Literals.PLAIN_SHAPE__KIND, kind,
                DesignPackage.Literals.PLAIN_SHAPE__WIDTH, above(width),
                DesignPackage.Literals.PLAIN_SHAPE__HEIGHT, above(height),
                DesignPackage.Literals.PLAIN_SHAPE__LINE_WIDTH, notBelow(lineWidth),
                DesignPackage.Literals.PLAIN_SHAPE__INK, ink));
    }

    private static double above(double value) {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException("The size of a shape must be above 0 mm, not " + value + ".");
        }
        return value;
    }

    private static double notBelow(double value) {
        if (!(value >= 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException("The line of a shape cannot be " + value + " mm wide.");
        }
        return value;
    }
}
