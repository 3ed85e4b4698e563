/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.ArtRegion;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;
import org.pollex.artwork.font.ShippedFont;
import org.pollex.artwork.font.ShippedFonts;
import org.pollex.artwork.svg.SvgReader;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Side;
import org.pollex.model.design.TextLine;
import org.pollex.print.DesignPrinter;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.PrintedTones;
import org.pollex.print.ShippedLettering;
import org.pollex.print.polarity.MarkPolarity;
import org.pollex.print.polarity.PrintedLight;
import org.pollex.rules.CheckContext;
import org.pollex.rules.Contributions;
import org.pollex.rules.Finding;
import org.pollex.rules.Suite;

/** Marks of one colour in white on black: lettering, signs and pictures. */
class OneColourMarksTest {

    private static final List<String> WORDS = List.of("TIDE", "Harbour Lights", "rock & roll", "8 BALL", "jiggle",
            "Quay 67", "BOB", "www.example.org", "Oak&Ember", "MMXXVI", "s\u00f6lo", "go!", "@home", "R.I.P.",
            "Big Band", "Caf\u00e9");
    private static final double PAGE = 16;
    private static final double[] SIZES = {2.5, 4, 6};
    private static Suite suite;

    @BeforeAll
    static void install() {
        suite = Suite.of(Contributions.fromClassPath(OneColourMarksTest.class.getClassLoader()));
    }

    private static Printed reversed(Mark mark, Art art) throws Exception {
        Design design = DesignFactory.eINSTANCE.createDesign();
        Side front = DesignFactory.eINSTANCE.createSide();
        front.setName("front");
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        mark.setId("m1");
        layer.getMarks().add(mark);
        front.getLayers().add(layer);
        design.getSides().add(front);
        return new DesignPrinter(suite.item("standard-pick"),
                suite.catalogues().material("solid-black").orElseThrow(),
                suite.catalogues().method("pad-one-colour").orElseThrow(),
                List.of(suite.catalogues().ink("white").orElseThrow()), placement -> art, new ShippedLettering())
                .print(design);
    }

    private static List<Finding> found(Printed printed) {
        List<Finding> found = new ArrayList<>();
        PrintCase.check(suite, "reads-negative").check(CheckContext.of(printed, suite.catalogues()),
                PrintCasesTest.sink("reads-negative", found));
        return found;
    }

    private static MarkPolarity polarity(Printed printed) {
        PrintedSide side = printed.sides().get(0);
        return MarkPolarity.of(side, side.meant().get(0), PrintedLight.of(side, PrintedTones.of(printed)));
    }

    private static Placement placed(double scale) {
        Placement placement = DesignFactory.eINSTANCE.createPlacement();
        placement.setArt("mark.svg");
        placement.setScale(scale);
        return placement;
    }

    /** 192 words in twelve faces, as outlines that no longer tell that they are text. */
    @Test
    void letteringIsNeverTold() throws Exception {
        List<String> told = new ArrayList<>();
        int words = 0;
        for (ShippedFont font : ShippedFonts.standard().all()) {
            for (String word : WORDS) {
                ArtPath path = font.outline(word, SIZES[words % SIZES.length]);
                Art art = new Art("mark.svg", 40, 20, true, List.of(new ArtRegion("p", path,
                        new ArtPaint.Flat(0, 1), List.of(), false)), List.of(), List.of());
                Printed printed = reversed(placed(1), art);
                MarkPolarity polarity = polarity(printed);
                assertTrue(polarity.oneColour());
                assertEquals(-1, polarity.outline().polarity(5).orElseThrow(), 1e-9, font.name() + " " + word);
                if (polarity.pictureness().orElseThrow() >= 0.2 || !found(printed).isEmpty()) {
                    told.add(font.name() + " " + word + " " + polarity.pictureness());
                }
                words++;
            }
        }
        assertEquals(192, words);
        assertEquals(List.of(), told);
    }

    @Test
    void linesOfTextMeanNoLightAndShade() throws Exception {
        for (String word : WORDS) {
            TextLine line = DesignFactory.eINSTANCE.createTextLine();
            line.setText(word);
            line.setFont("Liberation Serif");
            line.setSize(5);
            line.setInk("white");
            Printed printed = reversed(line, null);
            assertEquals(List.of(), printed.sides().get(0).meant());
            assertEquals(List.of(), found(printed), word);
        }
    }

    /**
     * Icons of open sets, from their WebJars. The pictures were seen while the measure was made, the signs were drawn
     * evenly; heads cut from a single part, such as a skull, are not told apart from signs.
     */
    @Test
    void picturesAreToldMoreThanSigns() throws Exception {
        List<String> silent = new ArrayList<>();
        List<String> loud = new ArrayList<>();
        int pictures = 0;
        int signs = 0;
        for (String line : lines()) {
            String[] words = line.split(" ");
            Art art = icon(words[1]);
            boolean told = !found(reversed(placed(PAGE / art.width()), art)).isEmpty();
            if (words[0].equals("picture")) {
                pictures++;
                if (!told) {
                    silent.add(words[1]);
                }
            } else {
                signs++;
                if (told) {
                    loud.add(words[1]);
                }
            }
        }
        assertTrue(pictures >= 19 && signs >= 100, pictures + " pictures, " + signs + " signs");
        assertTrue(silent.size() <= 4, silent.toString());
        assertTrue(loud.size() <= 0.02 * signs, loud.toString());
    }

    private static List<String> lines() throws IOException {
        try (InputStream in = OneColourMarksTest.class.getResourceAsStream("/icons-of-one-colour.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(l -> !l.startsWith("#"))
                    .toList();
        }
    }

    private static Art icon(String name) throws Exception {
        try (InputStream in = OneColourMarksTest.class.getResourceAsStream("/META-INF/resources/webjars/" + name)) {
            return new SvgReader().read(new ArtSource(name, in.readAllBytes()), ReadLimits.usual());
        }
    }
}
