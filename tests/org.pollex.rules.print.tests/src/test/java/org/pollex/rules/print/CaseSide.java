/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.locationtech.jts.geom.Geometry;
import org.pollex.artwork.ArtNotice;
import org.pollex.colour.Srgb;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.ColourArea;
import org.pollex.print.ColourMatch;
import org.pollex.print.InkRegion;
import org.pollex.print.MeantArt;
import org.pollex.print.PrintedMark;
import org.pollex.print.PrintedNotice;
import org.pollex.print.PrintedRaster;
import org.pollex.print.PrintedSide;
import org.pollex.print.PrintedType;
import org.pollex.print.item.ItemFace;

/**
 * A printed side of a case:
 *
 * <pre>
 * ink ID #RRGGBB SHAPE              an area of ink
 * mark NAME SHAPE                   a mark; without any, all ink is one mark
 * type XHEIGHT TEXT_WITHOUT_BLANKS SHAPE
 * lettering NAME XHEIGHT SHAPE      a mark that is a line of lettering
 * raster PPI SHAPE
 * notice KIND FEATURE MESSAGE
 * match #RRGGBB INK CIEDE2000 AREA [assigned]
 * drawn #RRGGBB SHAPE               what the art means there; its ink may be another or none
 * ground #RRGGBB|none               the ground it was drawn for; white without a word
 * </pre>
 */
final class CaseSide {

    private final String name;
    private final List<InkRegion> regions = new ArrayList<>();
    private final List<PrintedMark> marks = new ArrayList<>();
    private final List<PrintedType> types = new ArrayList<>();
    private final List<ColourMatch> matches = new ArrayList<>();
    private final List<PrintedRaster> rasters = new ArrayList<>();
    private final List<PrintedNotice> notices = new ArrayList<>();
    private final List<ColourArea> drawn = new ArrayList<>();
    private OptionalInt ground = OptionalInt.of(0xffffff);

    CaseSide(String name) {
        this.name = name;
    }

    String name() {
        return name;
    }

    void line(String word, String rest) {
        switch (word) {
            case "ink" -> {
                String[] parts = rest.split(" ", 3);
                regions.add(new InkRegion(parts[0], rgb(parts[1]), Shape.parse(parts[2])));
            }
            case "mark" -> {
                String[] parts = rest.split(" ", 2);
                marks.add(new PrintedMark(parts[0], parts[0], Shape.parse(parts[1]), false));
            }
            case "type" -> {
                String[] parts = rest.split(" ", 3);
                double x = Double.parseDouble(parts[0]);
                types.add(new PrintedType("text", parts[1], x / 0.5, x, Shape.parse(parts[2])));
            }
            case "lettering" -> {
                String[] parts = rest.split(" ", 3);
                double x = Double.parseDouble(parts[1]);
                marks.add(new PrintedMark(parts[0], parts[0], Shape.parse(parts[2]), true));
                types.add(new PrintedType(parts[0], parts[0], x / 0.5, x, Shape.parse(parts[2])));
            }
            case "raster" -> {
                String[] parts = rest.split(" ", 2);
                rasters.add(new PrintedRaster("picture", Double.parseDouble(parts[0]), Shape.parse(parts[1])));
            }
            case "notice" -> {
                String[] parts = rest.split(" ", 3);
                notices.add(new PrintedNotice("art", "ferry.svg", new ArtNotice(ArtNotice.Kind.valueOf(parts[0]),
                        parts[1], "g[1]", parts[2]), Polygons.empty()));
            }
            case "match" -> {
                String[] parts = rest.split(" ");
                matches.add(new ColourMatch(rgb(parts[0]), Srgb.lab(rgb(parts[0])), parts[1],
                        Double.parseDouble(parts[2]), parts.length > 4, Double.parseDouble(parts[3])));
            }
            case "drawn" -> {
                String[] parts = rest.split(" ", 2);
                drawn.add(new ColourArea(rgb(parts[0]), Shape.parse(parts[1])));
            }
            case "ground" -> ground = rest.equals("none") ? OptionalInt.empty() : OptionalInt.of(rgb(rest));
            default -> throw new IllegalArgumentException("A case knows no word \"" + word + "\".");
        }
    }

    private static int rgb(String text) {
        return Srgb.parse(text).orElseThrow();
    }

    PrintedSide printed(ItemFace face) {
        if (marks.isEmpty() && !regions.isEmpty()) {
            Geometry all = Polygons.union(regions.stream().map(InkRegion::area).toList());
            marks.add(new PrintedMark(types.isEmpty() ? "art" : types.get(0).mark(), "ferry.svg", all, false));
        }
        List<MeantArt> meant = drawn.isEmpty() ? List.of()
                : List.of(new MeantArt(marks.get(0).id(), ground, drawn));
        return new PrintedSide(face, regions, marks, types, matches, rasters, notices, List.of(), meant);
    }
}
