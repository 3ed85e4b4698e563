/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import static org.pollex.print.retone.Drawing.arc;
import static org.pollex.print.retone.Drawing.box;
import static org.pollex.print.retone.Drawing.disc;
import static org.pollex.print.retone.Drawing.ellipse;
import static org.pollex.print.retone.Drawing.line;
import static org.pollex.print.retone.Drawing.poly;
import static org.pollex.print.retone.Drawing.word;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.pollex.print.ColourArea;

/** Faces, animals, things, badges and lettering drawn for the tests, about 20 mm wide, for a white ground. */
public final class DrawnArt {

    public static final int WHITE = 0xffffff;
    private static final int BLACK = 0x101010;
    private static final int YELLOW = 0xffd54a;
    private static final int SKIN = 0xf2c9a0;
    private static final int BROWN = 0x4a2c17;
    private static final int RED = 0xb01020;
    private static final int NAVY = 0x14235a;
    private static final int SKY = 0x9fd3f0;
    private static final int GREEN = 0x1e5a2d;
    private static final int LIME = 0xb7dc5a;
    private static final int GREY = 0xc4c8cc;

    private DrawnArt() {
    }

    public static Map<String, List<ColourArea>> all() {
        Map<String, Drawing> art = new LinkedHashMap<>();
        faces(art);
        animals(art);
        things(art);
        badges(art);
        Map<String, List<ColourArea>> areas = new LinkedHashMap<>();
        art.forEach((name, drawing) -> areas.put(name, drawing.areas()));
        return areas;
    }

    private static Drawing face(int skin, double outline) {
        return new Drawing().outlined(skin, BLACK, outline, disc(10, 10, 8)).fill(BLACK, ellipse(7, 8, 0.9, 1.3, 0))
                .fill(BLACK, ellipse(13, 8, 0.9, 1.3, 0));
    }

    private static void faces(Map<String, Drawing> art) {
        art.put("smile", face(YELLOW, 0.5).fill(BLACK, arc(0.6, 10, 10, 5, 20, 160)));
        art.put("laugh", face(YELLOW, 0.4).fill(BROWN, poly(6, 12, 14, 12, 13, 15, 10, 16, 7, 15))
                .fill(RED, ellipse(10, 15, 1.8, 0.8, 0)));
        art.put("bob", new Drawing().fill(BROWN, ellipse(10, 10, 8.6, 9, 0)).fill(SKIN, ellipse(10, 11.5, 6, 6.6, 0))
                .fill(BLACK, disc(7.6, 11, 0.7)).fill(BLACK, disc(12.4, 11, 0.7))
                .fill(RED, arc(0.5, 10, 12.5, 2.6, 30, 150)));
        art.put("captain", face(SKIN, 0.4).fill(NAVY, poly(2.5, 6, 17.5, 6, 15.5, 1, 4.5, 1))
                .fill(YELLOW, disc(10, 3.5, 1.3)).fill(BROWN, poly(6, 13, 14, 13, 12.5, 17, 7.5, 17)));
        art.put("beard", face(SKIN, 0.5).fill(BROWN, ellipse(10, 15, 6.2, 4.4, 0))
                .fill(SKIN, ellipse(10, 12.6, 3, 1.4, 0))
                .fill(BLACK, line(0.5, 8.5, 12.8, 11.5, 12.8)));
        art.put("robot", new Drawing().outlined(GREY, BLACK, 0.5, box(3, 4, 14, 12)).fill(NAVY, box(5, 6, 10, 4))
                .fill(SKY, disc(7.5, 8, 1.1)).fill(SKY, disc(12.5, 8, 1.1)).fill(BLACK, line(0.5, 10, 4, 10, 1))
                .fill(BLACK, box(6, 12.5, 8, 1.5)));
    }

    private static void animals(Map<String, Drawing> art) {
        art.put("penguin", new Drawing().fill(BLACK, ellipse(10, 10, 6, 9, 0)).fill(WHITE, ellipse(10, 12, 3.9, 6, 0))
                .fill(WHITE, disc(8.2, 4.8, 1)).fill(WHITE, disc(11.8, 4.8, 1)).fill(0xff9a20, poly(9, 6, 11, 6, 10, 8))
                .fill(0xff9a20, ellipse(7, 19, 2, 0.8, 0)).fill(0xff9a20, ellipse(13, 19, 2, 0.8, 0)));
        art.put("outlined penguin", new Drawing().outlined(0x2b3a4a, BLACK, 0.4, ellipse(10, 10, 6, 9, 0))
                .outlined(WHITE, BLACK, 0.4, ellipse(10, 12, 3.9, 6, 0)).fill(YELLOW, poly(9, 4, 11, 4, 10, 6)));
        Drawing bee = new Drawing();
        bee.outlined(SKY, BLACK, 0.35, ellipse(8, 5, 2.4, 4, -25))
                .outlined(SKY, BLACK, 0.35, ellipse(12.5, 5, 2.4, 4, 25));
        bee.outlined(YELLOW, BLACK, 0.35, ellipse(10, 12, 7, 4.5, 0));
        for (double x : new double[] {6.5, 10, 13.5}) {
            bee.fill(BLACK, box(x - 0.75, 6, 1.5, 12).intersection(ellipse(10, 12, 7, 4.5, 0)));
        }
        art.put("bee", bee.fill(BLACK, line(0.35, 16, 9.5, 18, 7)).fill(BLACK, line(0.35, 16.6, 10, 19, 8.4)));
        Drawing beetle = new Drawing().fill(BLACK, disc(10, 4, 2.6))
                .outlined(0xe06050, BLACK, 0.4, ellipse(10, 11.5, 6.5, 7, 0));
        beetle.fill(BLACK, line(0.5, 10, 4.5, 10, 18));
        for (double[] p : new double[][] {{7, 9}, {13, 9}, {6.6, 13.5}, {13.4, 13.5}}) {
            beetle.fill(BLACK, disc(p[0], p[1], 1.1));
        }
        for (double y : new double[] {8, 12, 16}) {
            beetle.fill(BLACK, line(0.4, 4.2, y, 1.5, y + 1)).fill(BLACK, line(0.4, 15.8, y, 18.5, y + 1));
        }
        art.put("beetle", beetle);
        art.put("fish", new Drawing().outlined(0xf09030, BLACK, 0.4, ellipse(9, 10, 7, 4.6, 0))
                .outlined(0xf09030, BLACK, 0.4, poly(15, 10, 19, 6, 19, 14)).fill(WHITE, box(8, 5, 1.6, 10)
                .intersection(ellipse(9, 10, 6.7, 4.3, 0))).fill(BLACK, disc(4.8, 9, 0.8)));
        art.put("cat", new Drawing().fill(0x2a2a30, disc(10, 11, 7)).fill(0x2a2a30, poly(3.4, 9, 4.2, 1.5, 9, 5))
                .fill(0x2a2a30, poly(16.6, 9, 15.8, 1.5, 11, 5)).fill(LIME, ellipse(7.2, 10, 1.5, 1.1, 0))
                .fill(LIME, ellipse(12.8, 10, 1.5, 1.1, 0)).fill(BLACK, ellipse(7.2, 10, 0.35, 1, 0))
                .fill(BLACK, ellipse(12.8, 10, 0.35, 1, 0)).fill(0xf0a0a8, poly(9.2, 12.6, 10.8, 12.6, 10, 13.6))
                .fill(BLACK, line(0.3, 3, 13, 0.5, 12)).fill(BLACK, line(0.3, 17, 13, 19.5, 12)));
        art.put("panda", new Drawing().fill(BLACK, disc(4.5, 4.5, 2.6)).fill(BLACK, disc(15.5, 4.5, 2.6))
                .outlined(WHITE, BLACK, 0.4, disc(10, 10.5, 7.5)).fill(BLACK, ellipse(7, 9.5, 1.7, 2.3, 25))
                .fill(BLACK, ellipse(13, 9.5, 1.7, 2.3, -25)).fill(0xf0a0a8, disc(5.5, 14, 1))
                .fill(0xf0a0a8, disc(14.5, 14, 1))
                .fill(BLACK, ellipse(10, 13.2, 1.2, 0.8, 0)));
        art.put("owl", new Drawing().outlined(0x6b4424, BLACK, 0.4, ellipse(10, 11, 6.5, 8, 0))
                .outlined(WHITE, BLACK, 0.4, disc(7.4, 7.5, 2.4)).outlined(WHITE, BLACK, 0.4, disc(12.6, 7.5, 2.4))
                .fill(BLACK, disc(7.4, 7.5, 1)).fill(BLACK, disc(12.6, 7.5, 1))
                .fill(YELLOW, poly(9.2, 9.4, 10.8, 9.4, 10, 11.4))
                .fill(0xd9b48a, ellipse(10, 14.6, 3.4, 3.4, 0)));
    }

    private static void things(Map<String, Drawing> art) {
        Drawing light = new Drawing().fill(NAVY, box(2, 18, 16, 1.6))
                .outlined(WHITE, NAVY, 0.4, poly(7.5, 7, 12.5, 7, 14, 18, 6, 18));
        light.fill(RED, poly(7.2, 9.2, 12.8, 9.2, 13.2, 12.2, 6.8, 12.2)).fill(NAVY, poly(6.6, 4.4, 13.4, 4.4, 10, 1));
        art.put("lighthouse", light.fill(YELLOW, box(8, 4.6, 4, 2.2)).fill(NAVY, line(0.4, 14.5, 5.6, 19, 4.5))
                .fill(NAVY, line(0.4, 5.5, 5.6, 1, 4.5)));
        art.put("mug", new Drawing().fill(0x7a1f2a, arc(1.4, 15, 10, 3, -90, 90)).fill(0x7a1f2a, box(4, 4, 11, 13))
                .fill(0xf5e8d0, disc(9.5, 10.5, 3.4)).fill(0x7a1f2a, poly(8, 10, 11, 10, 9.5, 13)));
        art.put("tree", new Drawing().fill(BROWN, box(9, 14, 2, 6)).fill(GREEN, disc(10, 8, 6.5))
                .fill(LIME, disc(8, 6, 2))
                .fill(LIME, disc(12.4, 9.6, 1.5)));
        art.put("guitar", new Drawing().fill(BROWN, box(9.4, 0.5, 1.2, 9))
                .outlined(0xd98d3a, BLACK, 0.4, ellipse(10, 14, 5.5, 5, 0))
                .fill(BLACK, disc(10, 13.2, 1.6)).fill(BLACK, box(8, 16.6, 4, 0.8)));
        art.put("boat", new Drawing().fill(RED, poly(1, 14, 19, 14, 16, 18.5, 4, 18.5))
                .outlined(WHITE, NAVY, 0.4, poly(9.2, 2, 9.2, 13, 3, 13))
                .outlined(SKY, NAVY, 0.4, poly(10.8, 4, 10.8, 13, 17, 13)).fill(NAVY, line(0.5, 10, 1, 10, 14)));
    }

    private static void badges(Map<String, Drawing> art) {
        Geometry star = star(10, 10, 5.6, 2.6);
        art.put("star badge", new Drawing().fill(NAVY, disc(10, 10, 9)).fill(WHITE, disc(10, 10, 7.6)).fill(RED, star));
        art.put("name badge", new Drawing().fill(NAVY, ellipse(10, 10, 9.6, 6.2, 0))
                .fill(YELLOW, word(0.7, 5.4, 8.4, 2.9)));
        art.put("shield", new Drawing().outlined(YELLOW, BLACK, 0.5, poly(3, 2, 17, 2, 17, 10, 10, 19, 3, 10))
                .fill(NAVY, poly(3.3, 2.3, 10, 2.3, 10, 18.4, 3.3, 9.9)).fill(WHITE, star(6.6, 7, 2.2, 1)));
        art.put("sign", new Drawing().outlined(0xfff3c0, BROWN, 0.7, box(1, 5, 18, 9))
                .fill(BROWN, word(0.6, 4.6, 7.4, 3.6))
                .fill(BROWN, box(9.2, 14, 1.6, 5)));
        art.put("wordmark", new Drawing().fill(NAVY, word(0.6, 1, 14, 4)).fill(0xf0a020, disc(10, 6, 4.6))
                .fill(NAVY, disc(10, 6, 2.4)));
        art.put("lettering", new Drawing().fill(BLACK, word(0.8, 1, 6, 5)));
        art.put("stencil", new Drawing().fill(BLACK, ellipse(10, 10, 8.6, 9, 0)).fill(WHITE, ellipse(10, 11.5, 5, 6, 0))
                .fill(BLACK, ellipse(8, 10, 1, 0.7, 0)).fill(BLACK, ellipse(12, 10, 1, 0.7, 0))
                .fill(BLACK, ellipse(10, 14.6, 2, 0.6, 0)).fill(WHITE, arc(0.8, 10, 10, 7.2, 200, 250)));
        art.put("anchor", new Drawing().fill(NAVY, arc(1, 10, 10, 7, 10, 170)).fill(NAVY, line(1, 10, 3, 10, 17))
                .fill(NAVY, line(1, 6.5, 7, 13.5, 7)));
    }

    private static Geometry star(double x, double y, double outer, double inner) {
        double[] xy = new double[20];
        for (int i = 0; i < 10; i++) {
            double r = i % 2 == 0 ? outer : inner;
            xy[2 * i] = x + r * Math.sin(Math.PI * i / 5);
            xy[2 * i + 1] = y - r * Math.cos(Math.PI * i / 5);
        }
        return poly(xy);
    }
}
