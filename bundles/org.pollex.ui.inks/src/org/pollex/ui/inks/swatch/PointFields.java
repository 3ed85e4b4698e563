/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks.swatch;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.locationtech.jts.geom.Coordinate;
import org.pollex.ui.inks.Field;

/** Two points in a photograph, each in two numbers as {@code across, down}, and their distance on the material. */
final class PointFields {

    private final Field<Coordinate>[] points;
    private final Field<OptionalDouble> distance;

    /**
     * @param lengths  tells the scale there is now
     * @param pointed  takes a point that was typed
     * @param typed    runs when another distance was typed
     */
    @SuppressWarnings("unchecked")
    PointFields(Composite parent, Supplier<PhotoLength> lengths, BiConsumer<Integer, Coordinate> pointed,
            Runnable typed) {
        points = new Field[2];
        for (int i = 0; i < 2; i++) {
            int index = i;
            points[i] = new Field<>(column(parent), i == 0 ? "&First point" : "S&econd point",
                    "Its distance from the left and from the upper edge of the photograph, such as 120 px; 80 px",
                    text -> read(text, lengths.get()), () -> points[index].known()
                            .filter(each -> !Double.isNaN(each.x)).ifPresent(each -> pointed.accept(index, each)));
            points[i].letters(20);
        }
        distance = new Field<>(column(parent), "Distan&ce", "How far apart the points are on the material",
                PhotoLength::above, typed);
        distance.letters(9);
    }

    private static Composite column(Composite parent) {
        Composite one = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(Field.COLUMNS).applyTo(one);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(one);
        return one;
    }

    private static Coordinate read(String text, PhotoLength length) {
        if (text.isBlank()) {
            return new Coordinate(Double.NaN, Double.NaN);
        }
        String[] parts = text.split(";");
        if (parts.length != 2) {
            throw new IllegalArgumentException("Write how far from the left and from the top, such as 120 px; 80 px.");
        }
        return new Coordinate(length.pixels(parts[0]), length.pixels(parts[1]));
    }

    /** The distance that was typed, mm; empty when none. */
    OptionalDouble distance() {
        return distance.known().orElse(OptionalDouble.empty());
    }

    /** What is wrong with a field; empty when all can be used. */
    String complaint() {
        return Field.complaint(List.of(points[0], points[1], distance));
    }

    /** Shows a point, but not over what is being typed; null for none. */
    void show(int index, Coordinate at, PhotoLength length) {
        if (!points[index].text().isFocusControl()) {
            points[index].show(at == null ? "" : length.show(at.x) + "; " + length.show(at.y));
        }
    }

    /** Shows the distance, but not over what is being typed. */
    void show(OptionalDouble mm) {
        if (!distance.text().isFocusControl()) {
            distance.show(mm.isPresent() ? PhotoLength.shown(mm.getAsDouble()) : "");
        }
    }
}
