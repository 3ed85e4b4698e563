/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import org.locationtech.jts.geom.Geometry;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtNotice;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.SideInks.Tone;
import org.pollex.print.arrange.ArrangeLimits;
import org.pollex.print.arrange.Arrangement;
import org.pollex.print.arrange.FacePainter;
import org.pollex.print.arrange.PaintedShape;
import org.pollex.print.arrange.TooIntricateException;
import org.pollex.print.item.ItemFace;

/** Flattens the marks of one side: one arrangement of all of them, its labels turned into areas of ink. */
final class SidePrinter {

    /** A part between different neighbours thinner than this, mm, is a sliver: no press or eye tells it. */
    private static final double SLIVER = 0.005;
    /** A part with one neighbour all round is a sliver below what flattening keeps. */
    private static final double HAIR = PathRings.TOLERANCE;

    private final Press press;
    private final ArrangeLimits limits;
    private final BooleanSupplier cancelled;

    SidePrinter(Press press, ArrangeLimits limits, BooleanSupplier cancelled) {
        this.press = press;
        this.limits = limits;
        this.cancelled = cancelled;
    }

    /** Marks that lie over one another, arranged. */
    private record Arranged(Arrangement colours, SideColours labels, SideInks inks) {
    }

    PrintedSide print(ItemFace face, List<MarkShapes> marks) throws ArtException {
        Arranged side = arrange(marks);
        List<PrintedMark> printed = new ArrayList<>();
        List<PrintedType> types = new ArrayList<>();
        List<PrintedRaster> rasters = new ArrayList<>();
        List<PrintedNotice> notices = new ArrayList<>();
        for (MarkShapes mark : marks) {
            Geometry area = marks.size() == 1 ? area(side, mark) : area(mark);
            printed.add(new PrintedMark(mark.id, mark.name, area, mark.text));
            types.addAll(mark.types);
            for (MarkShapes.Picture picture : mark.pictures) {
                PaintedShape shape = mark.items.get(picture.item()).shape();
                Geometry where = arrange(mark, List.of(shape), FacePainter.topmost()).area(label -> true);
                rasters.add(new PrintedRaster(mark.id, picture.resolution(), where));
            }
            for (ArtNotice notice : mark.notices) {
                notices.add(mark.notice(notice, area));
            }
        }
        Arrangement inked = side.colours.mapped(side.inks::inked).withoutSlivers(SLIVER, HAIR);
        List<InkRegion> all = regions(inked, side.inks);
        List<InkRegion> left = LeftOut.from(all, marks, printed);
        return new PrintedSide(face, left, printed, types, side.inks.matches(), rasters, notices,
                overprints(inked, side.inks, left), meant(side, marks));
    }

    /** What each piece of art means where nothing lies over it. */
    private static List<MeantArt> meant(Arranged side, List<MarkShapes> marks) {
        List<Map<Integer, List<Geometry>>> colours = new ArrayList<>();
        marks.forEach(mark -> colours.add(new TreeMap<>()));
        side.colours.areas().forEach((label, area) -> {
            for (SideColours.Colour colour : side.labels.colours(label)) {
                colours.get(colour.mark()).computeIfAbsent(colour.rgb(), rgb -> new ArrayList<>()).add(area);
            }
        });
        List<MeantArt> meant = new ArrayList<>();
        for (int m = 0; m < marks.size(); m++) {
            List<ColourArea> areas = new ArrayList<>();
            colours.get(m).forEach((rgb, parts) -> areas.add(new ColourArea(rgb, Polygons.union(parts))));
            if (marks.get(m).isArt() && !areas.isEmpty()) {
                meant.add(new MeantArt(marks.get(m).id, marks.get(m).ground, areas));
            }
        }
        return meant;
    }

    /** Everything that a mark prints, its ground left out, whatever lies over it on the side. */
    Geometry area(MarkShapes mark) throws ArtException {
        return area(arrange(List.of(mark)), mark);
    }

    /** Every colour of a mark with where it shows, in the order of the colours. */
    List<ColourArea> colours(MarkShapes mark) throws ArtException {
        Arranged alone = arrange(List.of(mark));
        Map<Integer, List<Geometry>> byColour = new TreeMap<>();
        alone.colours.withoutSlivers(SLIVER, HAIR).areas().forEach((label, area) -> {
            for (SideColours.Colour colour : alone.labels.colours(label)) {
                byColour.computeIfAbsent(colour.rgb(), rgb -> new ArrayList<>()).add(area);
            }
        });
        List<ColourArea> found = new ArrayList<>();
        byColour.forEach((rgb, areas) -> found.add(new ColourArea(rgb, Polygons.union(areas))));
        return found;
    }

    private static Geometry area(Arranged alone, MarkShapes mark) {
        boolean bareToo = !mark.isArt() || !alone.inks.prints(0);
        return alone.colours.area(label -> alone.inks.prints(0, label, bareToo));
    }

    private Arranged arrange(List<MarkShapes> marks) throws ArtException {
        List<PaintedShape> shapes = new ArrayList<>();
        marks.forEach(mark -> shapes.addAll(mark.shapes()));
        SideColours labels = new SideColours(marks);
        Arrangement colours = arrange(heaviest(marks), shapes, labels);
        return new Arranged(colours, labels, new SideInks(labels, marks, colours.sizes(), press));
    }

    private static MarkShapes heaviest(List<MarkShapes> marks) {
        return marks.stream().max(Comparator.comparingInt(MarkShapes::corners)).orElseThrow();
    }

    private Arrangement arrange(MarkShapes blamed, List<PaintedShape> shapes, FacePainter painter)
            throws ArtException {
        try {
            return Arrangement.of(shapes, painter, limits, cancelled);
        } catch (TooIntricateException e) {
            throw refusal(blamed.file.isEmpty() ? blamed.name : blamed.file, e);
        }
    }

    /** What the user reads about art that is too intricate. */
    static ArtException refusal(String name, TooIntricateException reason) {
        return new ArtException(name, "the art is too intricate to print: " + reason.getMessage()
                + "; simplify it and export it again", reason);
    }

    private static List<InkRegion> regions(Arrangement inked, SideInks inks) {
        Map<Tone, Geometry> areas = new HashMap<>();
        if (inks.overprints()) {
            for (Tone tone : inks.order()) {
                areas.put(tone, inked.area(label -> inks.tones(label).contains(tone)));
            }
        } else {
            inked.areas().forEach((label, area) -> areas.put(inks.tones(label).get(0), area));
        }
        List<InkRegion> regions = new ArrayList<>();
        for (Tone tone : inks.order()) {
            Geometry area = areas.get(tone);
            if (area != null && !area.isEmpty()) {
                regions.add(new InkRegion(tone.ink(), tone.rgb(), area));
            }
        }
        return regions;
    }

    /** Where inks lie over one another, in what is left of their regions. */
    private List<Overprint> overprints(Arrangement inked, SideInks inks, List<InkRegion> left) {
        if (!inks.overprints()) {
            return List.of();
        }
        List<Overprint> found = new ArrayList<>();
        inked.areas().forEach((label, area) -> {
            List<InkRegion> laid = new ArrayList<>();
            Geometry where = area;
            for (Tone tone : inks.tones(label)) {
                for (InkRegion region : left) {
                    if (region.ink().equals(tone.ink()) && region.rgb() == tone.rgb()) {
                        laid.add(0, region);
                        where = Polygons.intersection(where, region.area());
                    }
                }
            }
            if (laid.size() > 1 && !where.isEmpty()) {
                laid.sort(Comparator.comparingInt(region -> press.turn(region.ink())));
                found.add(new Overprint(laid, where));
            }
        });
        return found;
    }
}
