/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.figure;

import java.util.List;
import org.eclipse.swt.graphics.RGB;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.print.SeenPrint;

/**
 * What is drawn of a mark: its painted areas in mm about its own middle, not scaled, turned or mirrored.
 *
 * @param areas    lowest first
 * @param hull     convex hull of all areas, not closed
 * @param trouble  why there is nothing to draw, for a placeholder; empty when all is well
 */
public record MarkLook(List<Area> areas, List<Coordinate> hull, String trouble) {

    /** An area of one printed colour. */
    public record Area(Geometry area, RGB colour) {

        /** An area in the colour that is seen there. */
        public static Area of(Geometry area, Lab colour) {
            int rgb = Srgb.of(colour);
            return new Area(area, new RGB(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255));
        }

        /** Places of a print. */
        public static List<Area> of(List<SeenPrint.Part> parts) {
            return parts.stream().map(each -> of(each.area(), each.colour())).toList();
        }
    }

    public MarkLook {
        areas = List.copyOf(areas);
        hull = List.copyOf(hull);
    }
}
