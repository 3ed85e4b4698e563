/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.polarity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.Lab;
import org.pollex.geometry.shape.PixelGrid;
import org.pollex.print.InkRegion;
import org.pollex.print.Overprint;
import org.pollex.print.PrintedSide;
import org.pollex.print.PrintedTones;

/**
 * How light every place of a printed side is.
 *
 * @param stock  L* of the bare stock, its mean where it has a pattern
 * @param tones  what lies on it, the later over the earlier
 */
public record PrintedLight(double stock, List<Tone> tones) {

    /**
     * An area of one lightness.
     *
     * @param where  mm on the item
     * @param l      L* of the print there
     */
    public record Tone(Geometry where, double l) {
    }

    public PrintedLight {
        tones = List.copyOf(tones);
    }

    /** The lightness of a side. */
    public static PrintedLight of(PrintedSide side, PrintedTones tones) {
        return of(side, tones.ground(), tones::of, tones::of);
    }

    /**
     * The lightness of a side on shades of its stock, each as if all of the stock were of it.
     *
     * @param shades  colours of the bare stock
     */
    public static List<PrintedLight> on(List<Lab> shades, PrintedSide side, PrintedTones tones) {
        return shades.stream().map(shade -> of(side, shade, region -> tones.laid(region).over(shade),
                over -> tones.laid(over).over(shade))).toList();
    }

    private static PrintedLight of(PrintedSide side, Lab ground, Function<InkRegion, Lab> one,
            Function<Overprint, Lab> several) {
        List<Tone> all = new ArrayList<>();
        side.regions().forEach(region -> all.add(new Tone(region.area(), one.apply(region).l())));
        side.overprints().forEach(over -> all.add(new Tone(over.area(), several.apply(over).l())));
        return new PrintedLight(ground.l(), all);
    }

    /** L* of each pixel of a grid. */
    float[] on(PixelGrid frame) {
        int[] index = new int[frame.size()];
        Arrays.fill(index, -1);
        for (int i = 0; i < tones.size(); i++) {
            frame.paint(tones.get(i).where(), i, index);
        }
        float[] l = new float[index.length];
        for (int i = 0; i < l.length; i++) {
            l[i] = (float) (index[i] < 0 ? stock : tones.get(index[i]).l());
        }
        return l;
    }
}
