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
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.catalogue.Material;
import org.pollex.model.store.Catalogues;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.stock.InkSites;
import org.pollex.print.stock.Legibility;
import org.pollex.print.stock.Stock;
import org.pollex.print.stock.Strokes;
import org.pollex.rules.CheckContext;
import org.pollex.rules.MissingSettingException;

/**
 * The patterns of materials against the strokes of one design: those of its first printed side. Each material is looked
 * over once.
 */
public final class StockNoise implements GroundNoise {

    private final Geometry area;
    private final boolean mirrored;
    private final double width;
    private final Map<Material, Legibility> known = new ConcurrentHashMap<>();
    private InkSites sites;

    /**
     * The noise for a design.
     *
     * @throws MissingSettingException when no catalogue says how wide strokes are at the most
     */
    public StockNoise(Printed printed, Catalogues catalogues) {
        PrintedSide side = printed.sides().isEmpty() ? null : printed.sides().get(0);
        area = side == null ? Polygons.empty() : side.printed();
        mirrored = side != null && printed.item().mirrored(side.name());
        width = Strokes.width(area, printed.method().getLineMin(),
                CheckContext.of(printed, catalogues).setting("busy-ground.widest"));
    }

    @Override
    public OptionalDouble legibility(Material material, UnaryOperator<Lab> film) {
        if (!Stock.patterned(material) || area.isEmpty() || !(width > 0)) {
            return OptionalDouble.empty();
        }
        Legibility legibility = known.get(material);
        if (legibility == null) {
            // Not within the map: a thread that waits for others may look at another material meanwhile.
            legibility = Legibility.of(Stock.of(material), sites(), mirrored);
            known.put(material, legibility);
        }
        return OptionalDouble.of(legibility.of(film));
    }

    private synchronized InkSites sites() {
        if (sites == null) {
            sites = new InkSites(area, width);
        }
        return sites;
    }
}
