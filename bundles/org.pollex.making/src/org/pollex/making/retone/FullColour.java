/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtPaint;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.geometry.shape.Polygons;
import org.pollex.making.session.Refusal;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.print.ColourArea;
import org.pollex.print.retone.OneLightInk;
import org.pollex.print.retone.RetoneLimits;
import org.pollex.print.retone.RetoneStyle;
import org.pollex.print.retone.Retoned;

/**
 * The marks of a sibling that prints in full colour, with white below, on a dark material. Colours stay as they are.
 * White alone prints what showed the paper inside the art, lines round dark masses that would melt into the material,
 * and dark lines that stand free on it. Art with gradients or pictures of pixels stays as it is, since art that is made
 * anew has flat colours only.
 */
final class FullColour {

    private static final String WHITE = "#ffffff";

    private final MadeArt made;
    private final Ground ground;
    private final RetoneStyle style;
    private final RetoneLimits limits;

    FullColour(MadeArt made, Ground ground, RetoneStyle style) {
        this.made = made;
        this.ground = ground;
        this.style = style;
        this.limits = Ground.limits(made.open().printed().method());
    }

    /** Changes a mark of the sibling on a face with a safe zone; tells what was done. */
    String retone(Mark mark, Geometry safe, Map<Placement, Path> art) throws Refusal {
        if (!(mark instanceof Placement placement)) {
            return "line of text or plain shape: stays as it is.";
        }
        placement.getAssignments().clear();
        String source = placement.getArt();
        if (!flat(made.art(placement))) {
            return source + ": stays as it is, white below keeps light light; it has gradients or pictures, so nothing "
                    + "is drawn into it.";
        }
        int paper = MadeArt.paper(placement);
        List<ColourArea> areas = made.colours(placement);
        White white = white(areas, paper);
        double smaller = Room.of(placement, areas, paper, white.area, safe);
        if (smaller < 1) {
            Room.shrink(placement, areas, paper, smaller);
            areas = made.colours(placement);
            white = white(areas, paper);
        }
        List<ColourArea> drawn = Drawn.withPaper(areas, paper);
        boolean inside = drawn.stream().anyMatch(area -> area.rgb() == paper);
        if (white.area.isEmpty() && !inside) {
            return source + ": stays as it is, white below keeps light light.";
        }
        Map<String, Geometry> fills = new LinkedHashMap<>();
        if (!white.alone) {
            drawn.forEach(area -> fills.put(Srgb.format(area.rgb()), area.area()));
        }
        if (!white.area.isEmpty()) {
            Geometry lines = white.alone ? white.area : Drawn.withCrumbs(white.area, drawn, limits.gap());
            fills.replaceAll((colour, area) -> Polygons.difference(area, lines));
            fills.merge(WHITE, lines, Polygons::union);
        }
        made.write(placement, ground.material().getId(), "", ground.material().getId(), fills, art);
        return source + ": " + told(white, inside) + Room.said(smaller);
    }

    /**
     * What prints in white alone.
     *
     * @param area   lines, or all of a mark of one dark colour
     * @param alone  whether nothing else prints
     * @param told   what re-toning a mark of one dark colour says
     */
    private record White(Geometry area, boolean alone, String told) {
    }

    private White white(List<ColourArea> areas, int paper) {
        Set<Integer> light = new HashSet<>();
        for (ColourArea area : areas) {
            if (isLight(area.rgb())) {
                light.add(area.rgb());
            }
        }
        if (!MadeArt.several(areas, paper) && light.stream().allMatch(rgb -> rgb == paper)) {
            Retoned retoned = OneLightInk.of(areas, paper, limits, style);
            return new White(retoned.light(), true, String.join(" ", retoned.done()));
        }
        return new White(OneLightInk.lines(areas, paper, limits, style, light), false, "");
    }

    private static String told(White white, boolean inside) {
        if (white.alone) {
            return white.told + " It prints in white alone.";
        }
        return "Its colours stay as they are, over white."
                + (inside ? " The paper that it encloses prints too." : "")
                + (white.area.isEmpty() ? "" : " Lines in white alone keep dark parts from melting into the material.");
    }

    /** Whether a colour shows light on the material; what is as good as black has no white below it. */
    private boolean isLight(int rgb) {
        Lab colour = Srgb.lab(rgb);
        return !made.open().printed().underbase().isBlack(colour) && ground.isLight(colour.l());
    }

    private static boolean flat(Art art) {
        return art.regions().stream().noneMatch(region -> region.paint() instanceof ArtPaint.Gradient
                || region.paint() instanceof ArtPaint.Raster);
    }
}
