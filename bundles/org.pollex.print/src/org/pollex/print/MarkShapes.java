/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.locationtech.jts.geom.Geometry;
import org.pollex.artwork.ArtNotice;
import org.pollex.model.design.Mark;
import org.pollex.print.arrange.PaintedShape;

/** What one mark paints on the item, before anything else covers it. */
final class MarkShapes {

    /**
     * One painted area of a mark.
     *
     * @param shape    where
     * @param rgb      colour of the art, or of the ink of a line or plain shape
     * @param opacity  above 0 and at most 1
     */
    record Item(PaintedShape shape, int rgb, double opacity) {
    }

    final Mark mark;
    final String id;
    final String name;
    final String file;
    final boolean text;
    /** Ink of a line of text or a plain shape; empty for art. */
    final String ink;
    /** Colour of the art that prints nothing. */
    final OptionalInt ground;
    /** Inks that the designer chose for colours of the art. */
    final Map<Integer, String> assigned = new HashMap<>();
    final List<Item> items = new ArrayList<>();
    final List<PrintedType> types = new ArrayList<>();
    final List<ArtNotice> notices = new ArrayList<>();
    final List<Picture> pictures = new ArrayList<>();

    /**
     * A picture of pixels.
     *
     * @param item        its position among the items
     * @param resolution  pixels an inch on the item
     */
    record Picture(int item, double resolution) {
    }

    private MarkShapes(Mark mark, String name, String file, boolean text, String ink, OptionalInt ground) {
        this.mark = mark;
        this.id = MarkPlace.text(mark.getId());
        this.name = name;
        this.file = file;
        this.text = text;
        this.ink = ink;
        this.ground = ground;
    }

    static MarkShapes ofArt(Mark mark, String name, String file, OptionalInt ground) {
        return new MarkShapes(mark, name, file, false, "", ground);
    }

    static MarkShapes ofInk(Mark mark, String name, boolean text, String ink) {
        return new MarkShapes(mark, name, "", text, ink, OptionalInt.empty());
    }

    boolean isArt() {
        return ink.isEmpty();
    }

    boolean overprints() {
        return mark.isOverprint();
    }

    boolean isGround(int rgb) {
        return ground.isPresent() && ground.getAsInt() == rgb;
    }

    List<PaintedShape> shapes() {
        return items.stream().map(Item::shape).toList();
    }

    /** Corners of all areas, a measure of how intricate the mark is. */
    int corners() {
        int n = 0;
        for (Item item : items) {
            for (double[] ring : item.shape().rings()) {
                n += ring.length / 2;
            }
        }
        return n;
    }

    PrintedNotice notice(ArtNotice notice, Geometry where) {
        return new PrintedNotice(id, file, notice, where);
    }
}
