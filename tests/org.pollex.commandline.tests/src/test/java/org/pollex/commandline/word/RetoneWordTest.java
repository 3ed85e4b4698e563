/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pollex.commandline.Studio;
import org.pollex.model.design.Design;
import org.pollex.model.design.Placement;
import org.pollex.model.store.ModelFiles;

class RetoneWordTest {

    private static final String FACE = "<circle cx=\"8\" cy=\"8\" r=\"6\" fill=\"#ffd54a\" stroke=\"#101010\" "
            + "stroke-width=\"0.5\"/><rect x=\"3\" y=\"1\" width=\"10\" height=\"3.5\" fill=\"#14235a\"/>"
            + "<circle cx=\"6\" cy=\"7.5\" r=\"0.8\"/><circle cx=\"10\" cy=\"7.5\" r=\"0.8\"/>";

    @TempDir
    private Path folder;
    private Studio studio;

    @BeforeEach
    void open() {
        studio = new Studio(folder);
        studio.write("face.svg", Studio.svg(16, 16, FACE));
        assertEquals(0, studio.make("a.design", "--front", "face.svg").code());
    }

    private Placement mark(String name) throws Exception {
        return (Placement) ModelFiles.DESIGNS.load(folder.resolve(name)).getSides().get(0).getLayers().get(0)
                .getMarks().get(0);
    }

    @Test
    void printsTheLightPartsInALightInkAndKeepsTheSource() throws Exception {
        byte[] before = studio.bytes("a.design");
        byte[] art = studio.bytes(mark("a.design").getArt());
        Studio.Answer answer = studio.call("retone", "a.design", "--material", "solid-black", "--out", "b.design");
        assertEquals(0, answer.code(), answer.err());
        for (String part : List.of("a.design for solid-black in white", "front, art/face.svg: Light parts print",
                "A line is laid round dark masses", "keep the limits", "Wrote b.design.")) {
            assertTrue(answer.out().contains(part), part + " in: " + answer.out());
        }
        assertArrayEquals(before, studio.bytes("a.design"));
        assertArrayEquals(art, studio.bytes(mark("a.design").getArt()));
        Design sibling = ModelFiles.DESIGNS.load(folder.resolve("b.design"));
        assertEquals("a.design", sibling.getRetonedFrom());
        assertEquals("solid-black", sibling.getMaterial());
        assertEquals(List.of("white"), sibling.getInks());
        String check = studio.call("check", "b.design").out();
        assertTrue(check.contains("b.design: 1 warning") && check.contains("fit-poor"), check);
    }

    @Test
    void theFlipReadsAsANegativeAndTheSiblingDoesNot() {
        studio.call("new", "flip.design", "--product", "standard-pick", "--material", "solid-black", "--method",
                "pad-one-colour", "--ink", "white", "--front", "face.svg");
        studio.call("retone", "a.design", "--material", "solid-black", "--out", "b.design");
        String flip = studio.call("check", "flip.design").out();
        assertTrue(flip.contains("reads-negative") && flip.contains("re-tone the design"), flip);
        String sibling = studio.call("check", "b.design").out();
        assertFalse(sibling.contains("reads-negative"), sibling);
    }

    @Test
    void givesTheSameBytesAgainAndFollowsTheSource() throws Exception {
        String[] call = {"retone", "a.design", "--material", "solid-black", "--out", "b.design"};
        studio.call(call);
        byte[] design = studio.bytes("b.design");
        String name = mark("b.design").getArt();
        byte[] art = studio.bytes(name);
        studio.call(call);
        assertArrayEquals(art, studio.bytes(mark("b.design").getArt()));
        assertEquals(name, mark("b.design").getArt());
        assertEquals(ids(design), ids(studio.bytes("b.design")));
        studio.write("face.svg", Studio.svg(16, 16, FACE.replace("r=\"0.8\"", "r=\"1\"")));
        studio.call("new", "a.design", "--product", "standard-pick", "--material", "solid-white", "--method",
                "pad-one-colour", "--ink", "navy", "--front", "face.svg", "--force");
        studio.call(call);
        assertNotEquals(new String(art), studio.text(mark("b.design").getArt()));
    }

    /** The design without the ids that saving gives. */
    private static String ids(byte[] design) {
        return new String(design, StandardCharsets.UTF_8).replaceAll(" id=\"[^\"]*\"", "");
    }

    @Test
    void keepsTheArtForADarkInkOnALightMaterial() throws Exception {
        Studio.Answer answer = studio.call("retone", "a.design", "--material", "solid-cream", "--out", "b.design");
        assertEquals(0, answer.code(), answer.err());
        assertEquals(mark("a.design").getSha256(), mark("b.design").getSha256());
        assertTrue(answer.out().contains("stays as it is"), answer.out());
    }

    @Test
    void makesRoomForTheLineRoundArtThatFilledTheSafeZone() {
        studio.write("cap.svg", Studio.svg(16, 16, "<rect x=\"1\" y=\"1\" width=\"14\" height=\"14\" "
                + "fill=\"#14235a\"/><circle cx=\"8\" cy=\"8\" r=\"4\" fill=\"#ffd54a\"/>"));
        studio.make("full.design", "--front", "cap.svg", "--largest");
        Studio.Answer answer = studio.call("retone", "full.design", "--material", "solid-black", "--out", "b.design");
        assertTrue(answer.out().contains("to make room for the line round it"), answer.out());
        assertEquals(0, studio.call("check", "b.design").code(), studio.call("check", "b.design").out());
    }

    @Test
    void matchesSeveralInksAnewAndPrintsWhatWasWhite() throws Exception {
        studio.write("flag.svg", Studio.svg(16, 16, "<rect x=\"1\" y=\"1\" width=\"14\" height=\"14\" "
                + "fill=\"#14235a\"/><circle cx=\"8\" cy=\"8\" r=\"4\" fill=\"#ffffff\"/>"
                + "<circle cx=\"8\" cy=\"8\" r=\"2.5\" fill=\"#c0392b\"/>"
                + "<circle cx=\"8\" cy=\"8\" r=\"1\" fill=\"#101010\"/>"));
        studio.call("new", "c.design", "--product", "standard-pick", "--material", "solid-white", "--method",
                "pad-spot", "--ink", "navy", "--ink", "red", "--ink", "black", "--front", "flag.svg");
        Studio.Answer answer = studio.call("retone", "c.design", "--material", "solid-black", "--out", "b.design");
        assertEquals(0, answer.code(), answer.err());
        assertTrue(answer.out().contains("for solid-black in white, navy, red"), answer.out());
        assertTrue(answer.out().contains("what the material comes nearest to stays bare"), answer.out());
        assertTrue(answer.out().contains("Lines in white keep dark parts"), answer.out());
        assertEquals(List.of("white", "navy", "red"), ModelFiles.DESIGNS.load(folder.resolve("b.design")).getInks());
        Map<String, String> choices = new TreeMap<>();
        mark("b.design").getAssignments().forEach(each -> choices.put(each.getColour(), each.getInk()));
        assertEquals("navy", choices.get("#14235a"));
        assertEquals("bare", choices.get("#101010"));
        assertEquals("white", choices.get("#ffffff"));
        assertEquals("red", choices.get("#c0392b"));
        assertEquals(5, choices.size(), "and a colour for the lines: " + choices);
        assertTrue(choices.containsValue("white"));
        String check = studio.call("check", "b.design").out();
        assertTrue(check.contains("0 with errors"), check);
    }

    @Test
    void keepsTheArtOfSeveralInksOnALightMaterial() throws Exception {
        studio.call("new", "c.design", "--product", "standard-pick", "--material", "solid-white", "--method",
                "pad-spot", "--ink", "yellow", "--ink", "black", "--front", "face.svg");
        Studio.Answer answer = studio.call("retone", "c.design", "--material", "solid-cream", "--out", "b.design");
        assertEquals(0, answer.code(), answer.err());
        assertTrue(answer.out().contains("for solid-cream in yellow, black"), answer.out());
        assertTrue(answer.out().contains("stays bare where the material is nearer"), answer.out());
        assertEquals(mark("c.design").getSha256(), mark("b.design").getSha256());
    }

    private static final String ROUND = "<rect x=\"1\" y=\"1\" width=\"14\" height=\"14\" fill=\"#fff6e0\"/>"
            + "<circle cx=\"8\" cy=\"8\" r=\"4.5\" fill=\"#f2c9a8\"/><circle cx=\"8\" cy=\"8\" r=\"2\" "
            + "fill=\"#c0392b\"/>";

    private Map<String, String> choices(String name) throws Exception {
        Map<String, String> choices = new TreeMap<>();
        mark(name).getAssignments().forEach(each -> choices.put(each.getColour(), each.getInk()));
        return choices;
    }

    private void inThreeInks(String name, String art) {
        studio.write("round.svg", Studio.svg(16, 16, art));
        assertEquals(0, studio.call("new", name, "--product", "standard-pick", "--material", "solid-white", "--method",
                "pad-spot", "--ink", "yellow", "--ink", "red", "--ink", "navy", "--front", "round.svg").code());
    }

    @Test
    void keepsPartsApartThatTheNearestInkRunsTogether() throws Exception {
        inThreeInks("c.design", ROUND);
        studio.call("retone", "c.design", "--material", "solid-black", "--out", "near.design");
        assertEquals("white", choices("near.design").get("#fff6e0"));
        assertEquals("white", choices("near.design").get("#f2c9a8"));
        Studio.Answer answer = studio.call("retone", "c.design", "--material", "solid-black", "--apart", "--out",
                "b.design");
        assertEquals(0, answer.code(), answer.err());
        assertEquals("white", choices("b.design").get("#fff6e0"));
        assertNotEquals("white", choices("b.design").get("#f2c9a8"));
        assertTrue(answer.out().contains("To keep parts apart #f2c9a8 prints in "), answer.out());
        assertTrue(answer.out().contains("though white is nearer. Hues may differ"), answer.out());
        assertTrue(mark("b.design").getRetoning().isApart(), "noted for when it is made anew");
        studio.write("art/round.svg", Studio.svg(16, 16, ROUND.replace("r=\"2\"", "r=\"1.5\"")));
        assertTrue(studio.call("retone", "--update", "b.design").out().contains("made anew"));
        assertNotEquals("white", choices("b.design").get("#f2c9a8"), "a sibling made anew keeps its style");
    }

    @Test
    void bringsLinesAndGapsOfAllInksToTheLimits() throws Exception {
        inThreeInks("c.design", "<rect x=\"1\" y=\"1\" width=\"14\" height=\"14\" fill=\"#ffe08a\"/>"
                + "<path d=\"M3 4L13 5\" stroke=\"#c0392b\" stroke-width=\"0.07\"/>"
                + "<path d=\"M3 8H13\" stroke=\"#101010\" stroke-width=\"0.1\"/>"
                + "<circle cx=\"8\" cy=\"11\" r=\"0.08\" fill=\"#c0392b\"/>"
                + "<circle cx=\"5\" cy=\"11\" r=\"2\" fill=\"#c0392b\"/>");
        String source = studio.call("check", "c.design").out();
        assertTrue(source.contains("line-too-thin"), source);
        Studio.Answer answer = studio.call("retone", "c.design", "--material", "solid-black", "--out", "b.design");
        assertTrue(answer.out().contains("Lines and gaps were brought to the limits."), answer.out());
        assertTrue(answer.out().contains("1 part too small to print in its ink is lost, 0.16 mm by 0.16 mm"),
                answer.out());
        studio.call("check", "b.design", "--json", "b.json");
        for (String check : List.of("line-too-thin", "gap-too-narrow", "speck", "pinhole")) {
            assertFalse(studio.text("b.json").contains(check), studio.text("b.json"));
        }
        byte[] art = studio.bytes(mark("b.design").getArt());
        studio.call("retone", "c.design", "--material", "solid-black", "--out", "b.design");
        assertArrayEquals(art, studio.bytes(mark("b.design").getArt()), "the same art gives the same bytes");
    }

    @Test
    void keepsPartsApartOnALightMaterialWithoutOtherArt() throws Exception {
        inThreeInks("c.design", "<rect x=\"1\" y=\"1\" width=\"14\" height=\"14\" fill=\"#9a5fb0\"/>"
                + "<circle cx=\"8\" cy=\"8\" r=\"4.5\" fill=\"#5a2f70\"/><circle cx=\"8\" cy=\"8\" r=\"2\" "
                + "fill=\"#ffffff\"/>");
        Studio.Answer answer = studio.call("retone", "c.design", "--material", "solid-cream", "--apart", "--out",
                "b.design");
        assertEquals(0, answer.code(), answer.err());
        assertEquals(mark("c.design").getSha256(), mark("b.design").getSha256());
        assertEquals(2, choices("b.design").size(), "what shows the paper has no ink: " + choices("b.design"));
        assertNotEquals(choices("b.design").get("#9a5fb0"), choices("b.design").get("#5a2f70"));
    }

    @Test
    void saysWhenThereIsNothingToKeepApartBy() {
        Studio.Answer answer = studio.call("retone", "a.design", "--material", "solid-black", "--apart", "--out",
                "b.design");
        assertTrue(answer.out().contains("several inks to choose from, which is not the case"), answer.out());
        answer = studio.call("retone", "a.design", "--material", "solid-black", "--apart", "--ink", "white", "--out",
                "b.design");
        assertEquals(2, answer.code());
        assertTrue(answer.err().contains("leave out --ink"), answer.err());
    }

    private Studio.Answer fullColour(String art, String material, String... more) {
        studio.write("full.svg", Studio.svg(16, 16, art));
        assertEquals(0, studio.call("new", "c.design", "--product", "standard-pick", "--material", "solid-white",
                "--method", "full-colour-white", "--front", "full.svg", "--force").code());
        List<String> words = new ArrayList<>(List.of("retone", "c.design", "--material", material, "--out",
                "b.design"));
        words.addAll(List.of(more));
        Studio.Answer answer = studio.call(words.toArray(new String[0]));
        assertEquals(0, answer.code(), answer.err());
        return answer;
    }

    /** Colours of the art of the sibling. */
    private Set<String> colours() throws Exception {
        Set<String> colours = new TreeSet<>();
        Matcher fill = Pattern.compile("fill=\"(#[0-9a-f]{6})\"").matcher(studio.text(mark("b.design").getArt()));
        while (fill.find()) {
            colours.add(fill.group(1));
        }
        return colours;
    }

    @Test
    void keepsFullColourArtWhereWhiteLiesBelow() throws Exception {
        Studio.Answer answer = fullColour(FACE, "solid-cream");
        assertTrue(answer.out().contains("white below keeps light light"), answer.out());
        assertEquals(mark("c.design").getSha256(), mark("b.design").getSha256());
        answer = fullColour("<circle cx=\"8\" cy=\"8\" r=\"6\" fill=\"#ffd54a\"/>", "solid-black");
        assertTrue(answer.out().contains("stays as it is, white below keeps light light"), answer.out());
        assertEquals(mark("c.design").getSha256(), mark("b.design").getSha256(), "nothing dark, nothing to add");
        assertEquals("solid-black", ModelFiles.DESIGNS.load(folder.resolve("b.design")).getMaterial());
    }

    @Test
    void printsInWhiteAloneWhatFullColourWouldLoseOnADarkMaterial() throws Exception {
        String art = FACE.replace("<circle cx=\"6\"", "<circle cx=\"8\" cy=\"11\" r=\"1.5\" fill=\"#ffffff\"/>"
                + "<circle cx=\"6\"");
        Studio.Answer answer = fullColour(art, "solid-black");
        assertTrue(answer.out().contains("Its colours stay as they are, over white. The paper that it encloses prints "
                + "too. Lines in white alone keep dark parts from melting into the material."), answer.out());
        assertEquals(Set.of("#000000", "#101010", "#14235a", "#ffd54a", "#ffffff"), colours());
        String everywhere = fullColour(art, "solid-black", "--lines", "everywhere").out();
        assertTrue(everywhere.contains("Lines in white alone"), everywhere);
        long most = white();
        fullColour(art, "solid-black", "--lines", "nowhere");
        long least = white();
        fullColour(art, "solid-black");
        assertTrue(least < white() && white() < most, least + " " + white() + " " + most);
        String check = studio.call("check", "b.design").out();
        for (String each : List.of("reads-negative", "line-too-thin", "gap-too-narrow", "underbase-missing")) {
            assertFalse(check.contains("error " + each), check);
        }
        assertEquals(answer.out(), fullColour(art, "solid-black").out());
    }

    /** Length of the text that draws what prints white. */
    private long white() throws Exception {
        Matcher path = Pattern.compile("fill=\"#ffffff\" d=\"([^\"]*)\"")
                .matcher(studio.text(mark("b.design").getArt()));
        return path.find() ? path.group(1).length() : 0;
    }

    @Test
    void aDarkMarkOfOneColourPrintsInWhiteAlone() throws Exception {
        Studio.Answer answer = fullColour("<path d=\"M3 3V13H5V9H11V13H13V3H11V7H5V3Z\" fill=\"#14235a\"/>",
                "solid-black");
        assertTrue(answer.out().contains("It prints in white alone."), answer.out());
        assertEquals(Set.of("#ffffff"), colours());
    }

    @Test
    void artWithGradientsStaysAsItIs() throws Exception {
        Studio.Answer answer = fullColour("<linearGradient id=\"g\"><stop offset=\"0\" stop-color=\"#14235a\"/>"
                + "<stop offset=\"1\" stop-color=\"#203060\"/></linearGradient><rect x=\"2\" y=\"2\" width=\"12\" "
                + "height=\"12\" fill=\"url(#g)\"/>", "solid-black");
        assertTrue(answer.out().contains("gradients or pictures, so nothing is drawn into it"), answer.out());
        assertEquals(mark("c.design").getSha256(), mark("b.design").getSha256());
    }

    @Test
    void takesTheInkThatIsAskedFor() throws Exception {
        studio.call("retone", "a.design", "--material", "solid-black", "--ink", "yellow", "--out", "b.design");
        assertEquals(List.of("yellow"), ModelFiles.DESIGNS.load(folder.resolve("b.design")).getInks());
    }

    @ParameterizedTest
    @CsvSource({"a.design, solid-blak, b.design, 2, solid-black", "a.design, solid-black, a.design, 2, another name",
        "a.design, solid-black, b.txt, 2, .design", "no.design, solid-black, b.design, 3, no.design"})
    void refusesInOneSentence(String design, String material, String out, int code, String says) {
        Studio.Answer answer = studio.call("retone", design, "--material", material, "--out", out);
        assertEquals(code, answer.code(), answer.err());
        assertEquals(1, answer.errors().size(), answer.err());
        assertTrue(answer.err().contains(says), answer.err());
    }
}
