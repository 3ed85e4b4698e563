/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks.swatch;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.pollex.print.stock.SwatchShot.Box;
import org.pollex.ui.inks.Field;

/** A box in a photograph in numbers: its left and upper edge, its width and height. All blank while there is none. */
final class BoxFields {

    private static final int FIELDS = 4;

    private final List<Field<Double>> fields;
    private final Supplier<PhotoLength> lengths;
    private final Runnable typed;
    private Optional<Box> box = Optional.empty();

    /**
     * @param of       what the box is, as it stands in tips
     * @param lengths  tells the scale there is now
     * @param typed    runs when another box was typed
     */
    BoxFields(Composite parent, String of, Supplier<PhotoLength> lengths, Runnable typed) {
        this.lengths = lengths;
        this.typed = typed;
        fields = List.of(field(parent, "&Left", "Left edge of " + of), field(parent, "&Top", "Upper edge of " + of),
                field(parent, "Wi&dth", "Width of " + of), field(parent, "&Height", "Height of " + of));
    }

    private Field<Double> field(Composite parent, String name, String tip) {
        Composite one = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(Field.COLUMNS).applyTo(one);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(one);
        Field<Double> field = new Field<>(one, name, tip + ", counted from the left upper corner of the photograph",
                text -> text.isBlank() ? Double.NaN : lengths.get().pixels(text), this::take);
        field.letters(9);
        return field;
    }

    /** The box; empty while there is none. */
    Optional<Box> box() {
        return box;
    }

    /** What is wrong with a field; empty when all can be used. */
    String complaint() {
        return Field.complaint(fields);
    }

    private void take() {
        double[] all = fields.stream().mapToDouble(each -> each.known().orElse(Double.NaN)).toArray();
        if (all.length == FIELDS && DoubleStream.of(all).noneMatch(Double::isNaN)) {
            int left = (int) Math.rint(all[0]);
            int top = (int) Math.rint(all[1]);
            box = Optional.of(new Box(left, top, (int) Math.rint(all[0] + all[2]) - left,
                    (int) Math.rint(all[1] + all[3]) - top));
        } else if (DoubleStream.of(all).allMatch(Double::isNaN)) {
            box = Optional.empty();
        }
        typed.run();
    }

    /** Shows a box, but not over what is being typed. */
    void show(Optional<Box> now) {
        box = now;
        PhotoLength length = lengths.get();
        double[] values = now.map(each -> new double[] {each.x(), each.y(), each.width(), each.height()}).orElse(null);
        for (int i = 0; i < FIELDS; i++) {
            if (!fields.get(i).text().isFocusControl()) {
                fields.get(i).show(values == null ? "" : length.show(values[i]));
            }
        }
    }
}
