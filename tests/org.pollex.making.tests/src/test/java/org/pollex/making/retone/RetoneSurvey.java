/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.Srgb;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.WidthField;
import org.pollex.making.desk.Desk;
import org.pollex.making.design.DesignMaker;
import org.pollex.making.design.Order;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import org.pollex.print.ColourArea;
import org.pollex.print.MeantArt;
import org.pollex.print.polarity.MarkPolarity;
import org.pollex.print.polarity.PrintedLight;
import org.pollex.print.retone.OneLightInk;
import org.pollex.print.retone.RetoneLimits;
import org.pollex.print.retone.Retoned;
import org.pollex.rules.Contributions;
import org.pollex.rules.Suite;

/**
 * How well re-toning for one light ink on a dark stock does on a folder of SVG that is no part of the project. Started
 * by hand, with the folder in the property {@code survey}; the figures stand in docs/bench.md.
 */
class RetoneSurvey {

    private static final int PAPER = 0xffffff;
    private static final double STOCK = 18;
    private static final double INK = 90;
    private static final double LEAST = 5;
    private static final RetoneLimits LIMITS = new RetoneLimits(0.15, 0.2);

    @TempDir
    private Path work;

    private final List<String> wrong = new ArrayList<>();
    private int pieces;
    private int unread;
    private int negative;
    private int right;
    private int parts;
    private int lost;

    @Test
    void survey() throws Exception {
        String folder = System.getProperty("survey", "");
        assertTrue(!folder.isEmpty(), "name a folder of SVG with -Dsurvey=FOLDER");
        int most = Integer.getInteger("pieces", 150);
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
        Session session = new Session(nowhere, nowhere, work, Suite.of(Contributions.fromClassPath(
                RetoneSurvey.class.getClassLoader())), LocalDate.of(2026, 11, 30), false);
        List<Path> all;
        try (Stream<Path> inside = Files.list(Path.of(folder))) {
            all = new ArrayList<>(inside.filter(each -> each.toString().endsWith(".svg")).sorted().toList());
        }
        Collections.shuffle(all, new Random(7));
        for (Path svg : all) {
            if (pieces == most) {
                break;
            }
            try {
                look(svg.getFileName().toString(), colours(session, svg));
            } catch (Refusal e) {
                unread++;
            }
        }
        System.out.printf(Locale.ROOT, "%d pieces, %d not read; polarity of the flip at most -0.8: %d, of the re-tone "
                + "of these at least 0.8: %d; parts %d, lost %d; wrong: %s%n", pieces, unread, negative, right, parts,
                lost, wrong);
        assertTrue(pieces > 0, "nothing was read");
    }

    private List<ColourArea> colours(Session session, Path svg) throws Refusal {
        Path file = work.resolve("piece" + pieces + ".design");
        new DesignMaker(session).make(file.toString(), new Order("wide-triangle-pick", "solid-white",
                "full-colour-white", List.of("white"), Optional.of(svg.toString()), Optional.empty(), true, true));
        return new Desk(session).open(file).printed().sides().get(0).meant().get(0).areas();
    }

    private void look(String name, List<ColourArea> art) {
        pieces++;
        Retoned result = OneLightInk.of(art, PAPER, LIMITS);
        WidthField.Both both = WidthField.both(result.light(), LIMITS.line(), LIMITS.gap());
        if (!both.lines().places(LIMITS.line()).isEmpty() || !both.gaps().places(LIMITS.gap()).isEmpty()) {
            wrong.add(name + " is below the limits");
        }
        MarkPolarity retoned = polarity(art, result.light());
        parts += retoned.parts();
        lost += retoned.lost();
        if (fills(polarity(art, flip(art))).orElse(0) <= -0.8) {
            negative++;
            OptionalDouble fills = fills(retoned);
            if (fills.orElse(0) >= 0.8) {
                right++;
            } else {
                wrong.add(name + " has a polarity of " + fills);
            }
        }
    }

    /** What one ink prints when only the material is exchanged: all that is darker than halfway to the paper. */
    private static Geometry flip(List<ColourArea> art) {
        double darkest = art.stream().mapToDouble(each -> Srgb.lab(each.rgb()).l()).min().orElseThrow();
        return Polygons.union(art.stream().filter(each -> Srgb.lab(each.rgb()).l() <= (100 + darkest) / 2)
                .map(ColourArea::area).toList());
    }

    private static OptionalDouble fills(MarkPolarity polarity) {
        return polarity.fills().polarity(LEAST);
    }

    private static MarkPolarity polarity(List<ColourArea> art, Geometry ink) {
        MeantArt meant = new MeantArt("art", OptionalInt.of(PAPER), art.stream().filter(each -> each.rgb() != PAPER)
                .toList());
        return MarkPolarity.of(meant, new PrintedLight(STOCK, List.of(new PrintedLight.Tone(ink, INK))));
    }
}
