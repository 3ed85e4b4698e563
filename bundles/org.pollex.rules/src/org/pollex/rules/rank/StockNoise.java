/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.rank;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.Lab;
import org.pollex.model.catalogue.Material;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.stock.Legibility;
import org.pollex.print.stock.Stock;
import org.pollex.print.stock.Strokes;

/**
 * The patterns of materials against the strokes of one design: those of its first printed side. Each material is looked
 * over once.
 */
public final class StockNoise implements GroundNoise {

    private static final double WIDEST = 1.6;

    private final Geometry area;
    private final boolean mirrored;
    private final double width;
    private final Map<Material, Legibility> known = new ConcurrentHashMap<>();

    /** The noise for a design. */
    public StockNoise(Printed printed) {
        PrintedSide side = printed.sides().isEmpty() ? null : printed.sides().get(0);
        area = side == null ? null : side.printed();
        mirrored = side != null && printed.item().mirrored(side.name());
        width = side == null ? 0 : Math.max(printed.method().getLineMin(), Math.min(WIDEST, Strokes.width(area)));
    }

    @Override
    public OptionalDouble legibility(Material material, UnaryOperator<Lab> film) {
        if (!Stock.patterned(material) || area == null || area.isEmpty() || !(width > 0)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(known.computeIfAbsent(material,
                each -> Legibility.of(Stock.of(each), area, mirrored, width)).of(film));
    }
}
