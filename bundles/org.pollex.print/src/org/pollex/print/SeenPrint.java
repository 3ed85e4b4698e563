/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.Lab;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.item.ItemFace;

/**
 * What of a print is seen on a face, as areas of one colour in the order in which they are to be painted: what shows
 * through clear stock from the other face, then the face's own print, whose colours are others where something lies
 * behind. Of a patterned material the mean colour counts as its ground. Worked out for each face when it is first asked
 * for, and kept. Two threads that ask at once may both work it out. Safe for threads.
 */
public final class SeenPrint {

    /**
     * A place of one colour.
     *
     * @param area    mm on the face
     * @param colour  what is seen there
     */
    public record Part(Geometry area, Lab colour) {
    }

    private record Face(List<SeenThrough> through, List<Part> behind, List<Part> own) {
    }

    private final Printed printed;
    private volatile PrintedTones tones;
    private final Map<String, Face> faces = new ConcurrentHashMap<>();

    SeenPrint(Printed printed) {
        this.printed = printed;
    }

    /** The films on the other face that show through clear stock, cut at the outline; to be laid on a pattern. */
    public List<SeenThrough> through(String face) {
        return of(face).through();
    }

    /** What shows through from the other face, cut at the outline; nothing on opaque stock. */
    public List<Part> behind(String face) {
        return of(face).behind();
    }

    /** What is printed on the face; not cut at the outline, beyond which it is not seen. */
    public List<Part> own(String face) {
        return of(face).own();
    }

    private Face of(String name) {
        Face known = faces.get(name);
        if (known == null) {
            known = work(name);
            faces.put(name, known);
        }
        return known;
    }

    private PrintedTones tones() {
        PrintedTones known = tones;
        if (known == null) {
            known = PrintedTones.of(printed);
            tones = known;
        }
        return known;
    }

    private Face work(String name) {
        PrintedTones tones = tones();
        List<SeenThrough> through = new ArrayList<>();
        printed.item().face(name).map(ItemFace::area).ifPresent(outline -> SeenThrough.on(printed, tones, name)
                .forEach(each -> through.add(new SeenThrough(Polygons.intersection(each.area(), outline), each.laid(),
                        each.translucency()))));
        through.removeIf(each -> each.area().isEmpty());
        List<Part> behind = through.stream().map(each -> new Part(each.area(), each.over(tones.ground()))).toList();
        List<Part> own = new ArrayList<>();
        for (ShownArea part : printed.side(name).map(printed.underbase()::shown).orElse(List.of())) {
            own.add(new Part(part.area(), tones.of(part)));
            for (SeenThrough each : through) {
                Geometry both = Polygons.intersection(part.area(), each.area());
                if (!both.isEmpty()) {
                    own.add(new Part(both, tones.laid(part).over(each.over(tones.ground()))));
                }
            }
        }
        return new Face(List.copyOf(through), behind, List.copyOf(own));
    }
}
