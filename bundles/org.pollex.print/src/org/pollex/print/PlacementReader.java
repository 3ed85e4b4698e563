/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtNotice;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.ArtRegion;
import org.pollex.artwork.ArtText;
import org.pollex.artwork.FillRule;
import org.pollex.colour.Srgb;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.design.Assignment;
import org.pollex.model.design.Placement;
import org.pollex.print.arrange.ClipShape;
import org.pollex.print.arrange.PaintedShape;
import org.pollex.print.arrange.TooIntricateException;

/** Puts the areas, lettering and notices of one piece of art on the item. */
final class PlacementReader {

    private static final double INCH = 25.4;
    private static final String NO_GROUND = "none";

    private final Placement placement;
    private final Art art;
    private final AffineTransform place;
    private final PathRings rings;
    private final Press press;
    private final Map<ArtPath, ClipShape> clips = new IdentityHashMap<>();

    PlacementReader(Placement placement, Art art, PathRings rings, Press press) throws PrintException {
        this.placement = placement;
        this.art = art;
        this.rings = rings;
        this.press = press;
        this.place = MarkPlace.of(placement, art.width() / 2, art.height() / 2);
    }

    MarkShapes read() throws PrintException, TooIntricateException {
        String name = MarkPlace.text(placement.getName());
        String file = MarkPlace.text(placement.getArt());
        MarkShapes mark = MarkShapes.ofArt(placement, name.isEmpty() ? art.name() : name,
                file.isEmpty() ? art.name() : file, ground());
        mark.notices.addAll(art.notices());
        assign(mark);
        for (ArtRegion region : art.regions()) {
            paint(region, mark);
        }
        for (ArtText text : art.texts()) {
            type(text, mark);
        }
        return mark;
    }

    private OptionalInt ground() throws PrintException {
        String ground = MarkPlace.text(placement.getGround()).strip();
        if (ground.isEmpty() || NO_GROUND.equalsIgnoreCase(ground)) {
            return OptionalInt.empty();
        }
        return OptionalInt.of(colour(ground, "ground"));
    }

    private int colour(String text, String what) throws PrintException {
        return Srgb.parse(text).orElseThrow(() -> new PrintException("Mark " + MarkPlace.label(placement)
                + " has the " + what + " colour \"" + text + "\"; write it as #rrggbb."));
    }

    private void assign(MarkShapes mark) throws PrintException {
        for (Assignment assignment : placement.getAssignments()) {
            String ink = MarkPlace.text(assignment.getInk());
            if (press.knows(ink) || press.fullColour() && ColourMatch.PROCESS.equals(ink)) {
                mark.assigned.put(colour(MarkPlace.text(assignment.getColour()), "assigned"), ink);
            } else {
                mark.notices.add(InkNotice.missing(placement, ink, "its colour is matched to the other inks"));
            }
        }
    }

    private void paint(ArtRegion region, MarkShapes mark) throws TooIntricateException {
        ArtPaint paint = region.paint();
        List<ClipShape> cuts = new ArrayList<>();
        for (ArtPath clip : region.clips()) {
            if (!holds(clip, region.path().bounds())) {
                cuts.add(clip(clip));
            }
        }
        List<double[]> outline = rings.of(region.path(), place);
        double opacity = Math.max(0, Math.min(1, paint.opacity()));
        if (outline.isEmpty() || opacity == 0) {
            return;
        }
        boolean covers = opacity == 1 && !mark.overprints();
        mark.items.add(new MarkShapes.Item(new PaintedShape(outline, evenOdd(region.path()), cuts, covers),
                paint.rgb() & 0xffffff, opacity));
        if (paint instanceof ArtPaint.Gradient) {
            mark.notices.add(unmixed("gradient", region.id(), press.fullColour()
                    ? "A gradient is shown in its mean colour; look at a print sample before the run."
                    : "Spot inks cannot print a gradient, so its mean colour stands in; ask for flat colours."));
        } else if (paint instanceof ArtPaint.Raster raster) {
            mark.pictures.add(new MarkShapes.Picture(mark.items.size() - 1, resolution(raster)));
            mark.notices.add(unmixed("image", region.id(), press.fullColour()
                    ? "A picture of pixels is shown as one area of its mean colour; look at a print sample."
                    : "Spot inks cannot print a picture of pixels, so one area of its mean colour stands in;"
                            + " ask for drawn art."));
        }
    }

    private static ArtNotice unmixed(String feature, String element, String message) {
        return new ArtNotice(ArtNotice.Kind.UNSUPPORTED, feature, element, message);
    }

    /** Whether a clip surely cuts nothing off, as the frame of a nested picture mostly does. */
    private static boolean holds(ArtPath clip, Rectangle2D box) {
        return clip.bounds().contains(box) && clip.shape().contains(box);
    }

    private ClipShape clip(ArtPath path) throws TooIntricateException {
        ClipShape known = clips.get(path);
        if (known == null) {
            known = new ClipShape(rings.of(path, place), evenOdd(path));
            clips.put(path, known);
        }
        return known;
    }

    private static boolean evenOdd(ArtPath path) {
        return path.rule() == FillRule.EVEN_ODD;
    }

    private double resolution(ArtPaint.Raster raster) {
        List<Double> m = raster.matrix();
        double wide = Math.hypot(m.get(0), m.get(1));
        double high = Math.hypot(m.get(2), m.get(3));
        return INCH / (Math.max(wide, high) * placement.getScale());
    }

    private void type(ArtText text, MarkShapes mark) {
        Rectangle2D box = null;
        for (int i : text.regions()) {
            Rectangle2D bounds = art.regions().get(i).path().bounds();
            box = box == null ? bounds : box.createUnion(bounds);
        }
        if (box != null) {
            double scale = placement.getScale();
            mark.types.add(new PrintedType(mark.id, text.text(), text.size() * scale, text.xHeight() * scale,
                    box(box, place)));
        }
    }

    /** A box of the mark's own coordinates on the item. */
    static Geometry box(Rectangle2D box, AffineTransform place) {
        double[][] corners = {{box.getMinX(), box.getMinY()}, {box.getMaxX(), box.getMinY()},
            {box.getMaxX(), box.getMaxY()}, {box.getMinX(), box.getMaxY()}};
        Coordinate[] placed = new Coordinate[4];
        for (int i = 0; i < 4; i++) {
            Point2D p = place.transform(new Point2D.Double(corners[i][0], corners[i][1]), null);
            placed[i] = new Coordinate(p.getX(), p.getY());
        }
        return Polygons.polygon(placed);
    }
}
