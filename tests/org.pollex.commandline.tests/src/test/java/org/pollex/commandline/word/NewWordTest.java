/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Envelope;
import org.pollex.commandline.Studio;
import org.pollex.model.design.Design;
import org.pollex.model.design.Placement;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ModelFiles;
import org.pollex.print.item.ItemFace;

class NewWordTest {

    @TempDir
    private Path folder;
    private Studio studio;

    @BeforeEach
    void open() {
        studio = new Studio(folder);
        studio.write("square.svg", Studio.square());
    }

    private Design design(String name) throws Exception {
        return ModelFiles.DESIGNS.load(folder.resolve(name));
    }

    private Placement placement(String name, int side) throws Exception {
        return (Placement) design(name).getSides().get(side).getLayers().get(0).getMarks().get(0);
    }

    private static Envelope safe() throws Exception {
        ItemFace front = Studio.SUITE.item("standard-pick").face("front").orElseThrow();
        return front.safe().getEnvelopeInternal();
    }

    @Test
    void placesArtOfAPhysicalSizeAtThatSizeInTheMiddleOfTheSafeZone() throws Exception {
        Studio.Answer answer = studio.make("a.design", "--front", "square.svg");
        assertEquals(0, answer.code(), answer.err());
        Placement placement = placement("a.design", 0);
        assertEquals(1, placement.getScale());
        assertEquals(0, placement.getTurn());
        // The square's middle is at 6, 6 of a page of 16: 2 mm left of and above the middle of the page.
        assertEquals(safe().centre().x + 2, placement.getX(), 1e-4);
        assertEquals(safe().centre().y + 2, placement.getY(), 1e-4);
    }

    @Test
    void copiesTheArtUnchanged() throws Exception {
        studio.make("job/a.design", "--front", "square.svg");
        Placement placement = placement("job/a.design", 0);
        assertEquals("art/square.svg", placement.getArt());
        assertArrayEquals(studio.bytes("square.svg"), studio.bytes("job/art/square.svg"));
        assertEquals(ArtFiles.sha256(Studio.square().getBytes(StandardCharsets.UTF_8)), placement.getSha256());
        assertEquals(List.of("job/a.design", "job/art/square.svg", "square.svg"), studio.files());
    }

    @Test
    void keepsWhatWasOrdered() throws Exception {
        studio.call("new", "a.design", "--product", "small-pick", "--material", "solid-black", "--method", "pad-spot",
                "--ink", "white", "--ink", "red", "--front", "square.svg");
        Design design = design("a.design");
        assertEquals("a", design.getName());
        assertEquals("small-pick", design.getProduct());
        assertEquals("solid-black", design.getMaterial());
        assertEquals("pad-spot", design.getMethod());
        assertEquals(List.of("white", "red"), design.getInks());
    }

    @ParameterizedTest
    @CsvSource({"--largest, square.svg", "--force, unsized.svg"})
    void placesLargestWhenAskedOrWithoutASize(String option, String art) throws Exception {
        studio.write("unsized.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 16 16\">"
                + "<rect x=\"2\" y=\"2\" width=\"8\" height=\"8\" fill=\"#123456\"/></svg>");
        Studio.Answer answer = studio.make("a.design", "--front", art, option);
        assertEquals(0, answer.code(), answer.err());
        double unit = art.equals("square.svg") ? 1 : 25.4 / 96;
        double side = placement("a.design", 0).getScale() * 8 * unit;
        assertTrue(side > 14 && side < 20, "a square of " + side + " mm");
        assertEquals(0, studio.call("check", "a.design").code());
    }

    @Test
    void putsArtOnTheBack() throws Exception {
        studio.write("back.svg", Studio.svg(10, 10, "<circle cx=\"5\" cy=\"5\" r=\"4\"/>"));
        assertEquals(0, studio.make("a.design", "--front", "square.svg", "--back", "back.svg").code());
        assertEquals(List.of("front", "back"), design("a.design").getSides().stream().map(s -> s.getName()).toList());
        assertEquals("art/back.svg", placement("a.design", 1).getArt());
    }

    @Test
    void makesADesignWithoutArt() throws Exception {
        assertEquals(0, studio.make("a.design").code());
        assertEquals(0, design("a.design").getSides().size());
    }

    @Test
    void makesADesignForEachArtOfAFolder() throws Exception {
        studio.write("client/one.svg", Studio.square());
        studio.write("client/two.SVG", Studio.hairline());
        studio.write("client/broken.svg", "<svg");
        studio.write("client/notes.txt", "no art");
        Studio.Answer answer = studio.make("designs", "--front", "client");
        assertEquals(3, answer.code(), answer.out());
        assertEquals(1, answer.errors().size(), answer.err());
        assertTrue(answer.err().startsWith("client/broken.svg: "), answer.err());
        assertTrue(studio.files().containsAll(List.of("designs/one.design", "designs/two.design",
                "designs/art/one.svg", "designs/art/two.SVG")), studio.files().toString());
        assertTrue(answer.out().contains("2 of 3 designs written."), answer.out());
    }

    @ParameterizedTest
    @CsvSource({"pad-one-colour, solid-black, white", "pad-one-colour, solid-white, black",
        "full-colour-white, solid-black, ''"})
    void choosesInksByTheMethod(String method, String material, String inks) throws Exception {
        studio.call("new", "a.design", "--product", "standard-pick", "--material", material, "--method", method,
                "--front", "square.svg");
        assertEquals(inks, String.join(" ", design("a.design").getInks()));
    }

    @Test
    void choosesTheInksNearestToTheArt() throws Exception {
        studio.write("flag.svg", Studio.svg(12, 12, "<rect width=\"12\" height=\"12\" fill=\"#fff\"/>"
                + "<rect width=\"8\" height=\"8\" fill=\"#c8102e\"/><rect x=\"9\" width=\"3\" height=\"12\" "
                + "fill=\"#ffd100\"/>"));
        studio.call("new", "a.design", "--product", "standard-pick", "--material", "solid-black", "--method",
                "pad-spot", "--front", "flag.svg");
        assertEquals(List.of("red", "yellow"), design("a.design").getInks());
    }

    @Test
    void replacesOnlyWhenTold() throws Exception {
        studio.make("a.design", "--front", "square.svg");
        byte[] before = studio.bytes("a.design");
        Studio.Answer answer = studio.make("a.design", "--front", "square.svg", "--largest");
        assertEquals(4, answer.code());
        assertTrue(answer.err().contains("--force"), answer.err());
        assertArrayEquals(before, studio.bytes("a.design"));
        assertEquals(0, studio.make("a.design", "--front", "square.svg", "--largest", "--force").code());
        assertArrayEquals(before, studio.bytes(".a.design.last"));
    }

    @ParameterizedTest
    @CsvSource({"--product, standart-pick, standard-pick", "--material, solid-blck, solid-black",
        "--method, pad, pad-spot", "--ink, nvy, navy"})
    void namesNearMatchesOfUnknownIds(String option, String wrong, String meant) {
        List<String> words = new ArrayList<>(List.of("new", "a.design", "--product", "standard-pick",
                "--material", "solid-white", "--method", "pad-spot", "--ink", "navy", "--front", "square.svg"));
        words.set(words.indexOf(option) + 1, wrong);
        Studio.Answer answer = studio.call(words.toArray(new String[0]));
        assertEquals(2, answer.code());
        assertEquals(1, answer.errors().size());
        assertTrue(answer.err().contains(meant), answer.err());
        assertEquals(List.of("square.svg"), studio.files());
    }

    @Test
    void givesTheSameFileEachTime() {
        studio.make("one/a.design", "--front", "square.svg");
        studio.make("two/a.design", "--front", "square.svg");
        assertEquals(studio.text("one/a.design"), studio.text("two/a.design"));
    }
}
