/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.geometry.shape.Offset;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.catalogue.Ink;

/**
 * The white that a method lays below the colours of a print, as an area of its own.
 *
 * <p>Colours get white below them; black does not, and a place that is white alone has nothing on it
 * ({@link WhiteBelow}). Where colour ends on the bare stock, the white ends short of it by the choke, so that it does
 * not peep out when the press is out of register. Where colour meets black, the white runs on below the black by the
 * register of the method, but never nearer to the bare stock than the choke. White alone keeps its full size. All of
 * it is common practice, no source.
 *
 * <p>Worked out for each side when it is first asked for, and kept. Two threads that ask at once may both work it
 * out. Safe for threads. Nothing is cut at the outline of the item.
 */
public final class Underbase {

    private record White(Geometry coloured, Geometry wanted, Geometry area) {
    }

    private final Printed printed;
    private final Map<String, Lab> inks = new HashMap<>();
    private final Map<String, White> whites = new ConcurrentHashMap<>();
    private final Map<String, List<ShownArea>> shown = new ConcurrentHashMap<>();

    Underbase(Printed printed) {
        this.printed = printed;
        for (Ink ink : printed.inks()) {
            if (ink.getLab() != null) {
                inks.put(ink.getId(), FilmColour.lab(ink.getLab()));
            }
        }
    }

    /** Whether the method lays white at all. */
    public boolean isLaid() {
        return printed.method().isWhiteUnder();
    }

    /** What an area of ink has to do with the white. */
    public WhiteBelow below(InkRegion region) {
        if (!isLaid()) {
            return WhiteBelow.NONE;
        }
        Lab ink = region.ink().equals(ColourMatch.PROCESS) ? null : inks.get(region.ink());
        if (isWhite(region.ink())) {
            return WhiteBelow.ALONE;
        }
        Lab colour = ink == null ? Srgb.lab(region.rgb()) : ink;
        if (isBlack(colour)) {
            return WhiteBelow.NONE;
        }
        return ink == null && colour.l() >= printed.settings().white() ? WhiteBelow.ALONE : WhiteBelow.NEEDED;
    }

    /** What any ink has to do with the white. */
    public WhiteBelow below(Ink ink) {
        return !isLaid() || ink.getLab() != null && isBlack(FilmColour.lab(ink.getLab())) ? WhiteBelow.NONE
                : isWhite(ink.getId()) ? WhiteBelow.ALONE : WhiteBelow.NEEDED;
    }

    /** Whether it is the ink that is laid below. */
    public boolean isWhite(String ink) {
        return isLaid() && printed.white().filter(white -> ink.equals(white.getId())).isPresent();
    }

    /** Whether a colour is as good as black, which gets no white below it. */
    public boolean isBlack(Lab colour) {
        return colour.l() <= printed.settings().black() && colour.chroma() <= printed.settings().grey();
    }

    /**
     * Where white lies.
     *
     * @param side  one of the sides of this print
     * @return valid, empty when there is none
     */
    public Geometry area(PrintedSide side) {
        return white(side).area;
    }

    /** Where the colours of a side need white below them, whether they have it or not; valid. */
    public Geometry coloured(PrintedSide side) {
        return white(side).coloured;
    }

    /** Where the colours of a side need white below them or are white alone, whether they have it or not; valid. */
    public Geometry wanted(PrintedSide side) {
        return white(side).wanted;
    }

    /**
     * What a side shows, in the order in which it is to be painted: first every area of ink as on bare stock, then,
     * over that, every place with white below as it looks there. Areas therefore overlap.
     */
    public List<ShownArea> shown(PrintedSide side) {
        return known(shown, side, this::show);
    }

    private White white(PrintedSide side) {
        return known(whites, side, this::choke);
    }

    private static <T> T known(Map<String, T> all, PrintedSide side, Function<PrintedSide, T> source) {
        T known = all.get(side.name());
        if (known == null) {
            known = source.apply(side);
            all.put(side.name(), known);
        }
        return known;
    }

    private Geometry union(PrintedSide side, Predicate<WhiteBelow> which) {
        return InkRegions.union(side.regions().stream().filter(region -> which.test(below(region))).toList());
    }

    private White choke(PrintedSide side) {
        if (!isLaid()) {
            return new White(Polygons.empty(), Polygons.empty(), Polygons.empty());
        }
        Geometry coloured = union(side, below -> below == WhiteBelow.NEEDED);
        Geometry alone = union(side, below -> below == WhiteBelow.ALONE);
        Geometry wanted = alone.isEmpty() ? coloured : union(side, below -> below != WhiteBelow.NONE);
        Geometry black = union(side, below -> below == WhiteBelow.NONE);
        Geometry area = Offset.inward(black.isEmpty() ? wanted : side.printed(), printed.settings().choke());
        if (!black.isEmpty()) {
            Geometry run = Offset.outward(wanted, printed.method().getRegister());
            area = reaching(wanted, Polygons.difference(area, Polygons.difference(black, run)));
        }
        return new White(coloured, wanted, alone.isEmpty() ? area : Polygons.union(area, alone));
    }

    /** Only the parts that lie below colour: a run of white must not go on below black across a gap. */
    private static Geometry reaching(Geometry wanted, Geometry area) {
        PreparedGeometry prepared = PreparedGeometryFactory.prepare(wanted);
        return Polygons.of(Polygons.parts(area).stream().filter(prepared::intersects).toList());
    }

    private List<ShownArea> show(PrintedSide side) {
        List<ShownArea> all = new ArrayList<>();
        List<InkRegion> regions = whole(side.regions());
        regions.forEach(region -> all.add(new ShownArea(List.of(region), false, region.area())));
        side.overprints().forEach(both -> all.add(new ShownArea(both.laid(), false, both.area())));
        Geometry white = area(side);
        if (!white.isEmpty()) {
            regions.forEach(region -> over(white, List.of(region), region.area(), all));
            side.overprints().forEach(both -> over(white, both.laid(), both.area(), all));
        }
        return List.copyOf(all);
    }

    /** Areas of one ink as one, so that none of them has a seam where two colours of the art meet. */
    private List<InkRegion> whole(List<InkRegion> regions) {
        Map<String, List<InkRegion>> alike = new LinkedHashMap<>();
        for (InkRegion each : regions) {
            // what looks as the art does, and not as its ink, stays apart
            String key = inks.containsKey(each.ink()) ? each.ink() : each.ink() + ' ' + each.rgb();
            alike.computeIfAbsent(key, ink -> new ArrayList<>()).add(each);
        }
        return alike.values().stream().map(all -> all.size() == 1 ? all.get(0)
                : new InkRegion(all.get(0).ink(), all.get(0).rgb(), InkRegions.union(all))).toList();
    }

    private static void over(Geometry white, List<InkRegion> laid, Geometry area, List<ShownArea> into) {
        Geometry part = Polygons.intersection(area, white);
        if (!part.isEmpty()) {
            into.add(new ShownArea(laid, true, part));
        }
    }
}
