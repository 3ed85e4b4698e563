/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pollex.commandline.Studio;
import org.pollex.model.design.Assignment;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Placement;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;

/** A sibling is brought up to date with the art of its source. */
class RetoneUpdateTest {

    private static final String[] UPDATE = {"retone", "--update", "b.design"};

    @TempDir
    private Path folder;
    private Studio studio;

    @BeforeEach
    void makeTheSibling() {
        studio = new Studio(folder);
        studio.write("face.svg", face("#14235a"));
        assertEquals(0, studio.make("a.design", "--front", "face.svg").code());
        Studio.Answer answer = studio.call("retone", "a.design", "--material", "solid-black", "--grow", "--out",
                "b.design");
        assertEquals(0, answer.code(), answer.err());
        assertTrue(answer.out().contains("half of the outlines"), answer.out());
    }

    private static byte[] face(String hat) {
        return Studio.svg(16, 16, "<circle cx=\"8\" cy=\"8\" r=\"6\" fill=\"#f2c9a0\" stroke=\"#000\" "
                + "stroke-width=\"0.5\"/><rect x=\"3\" y=\"1\" width=\"10\" height=\"3.5\" fill=\"" + hat + "\"/>")
                .getBytes(java.nio.charset.StandardCharsets.UTF_8);
    }

    private static Placement mark(Design design) {
        return (Placement) design.getSides().get(0).getLayers().get(0).getMarks().get(0);
    }

    private Placement mark(String name) throws Exception {
        return mark(ModelFiles.DESIGNS.load(folder.resolve(name)));
    }

    private void change(String name, Consumer<Design> how) throws Exception {
        Opened<Design> opened = ModelFiles.DESIGNS.open(folder.resolve(name));
        how.accept(opened.model());
        ModelFiles.DESIGNS.save(opened);
    }

    private void otherArt() {
        studio.write("art/face.svg", face("#ffe9a0"));
    }

    @Test
    void notesWhatItWasMadeFrom() throws Exception {
        Placement made = mark("b.design");
        assertEquals(mark("a.design").getSha256(), made.getRetoning().getSha256());
        assertEquals(made.getSha256(), made.getRetoning().getMade());
        assertEquals(ArtFiles.sha256(folder.resolve(made.getArt())), made.getSha256());
        assertTrue(made.getRetoning().isGrow());
    }

    @Test
    void leavesASiblingAloneThatIsUpToDate() {
        byte[] before = studio.bytes("b.design");
        Studio.Answer answer = studio.call(UPDATE);
        assertEquals(0, answer.code(), answer.err());
        assertTrue(answer.out().contains("b.design: is up to date with a.design."), answer.out());
        assertArrayEquals(before, studio.bytes("b.design"));
    }

    @Test
    void makesItAnewAndKeepsWhatWasMovedByHand() throws Exception {
        change("b.design", design -> {
            mark(design).setX(mark(design).getX() + 1.25);
            mark(design).setScale(0.9);
            mark(design).setTurn(30);
            design.setName("Mine");
        });
        byte[] source = studio.bytes("a.design");
        Placement before = mark("b.design");
        byte[] artBefore = studio.bytes(before.getArt());
        otherArt();
        Studio.Answer answer = studio.call(UPDATE);
        assertEquals(0, answer.code(), answer.err());
        assertTrue(answer.out().contains("b.design: made anew from face.svg of a.design."), answer.out());
        Placement after = mark("b.design");
        assertEquals(ArtFiles.sha256(folder.resolve("art/face.svg")), after.getRetoning().getSha256());
        assertNotEquals(before.getSha256(), after.getSha256());
        assertEquals(before.getX() - before.getRetoning().getX(), after.getX() - after.getRetoning().getX(), 1e-9);
        assertEquals(0.9, after.getScale(), 1e-9);
        assertEquals(30, after.getTurn(), 1e-9);
        assertTrue(after.getRetoning().isGrow(), "the style stays");
        assertEquals("Mine", ModelFiles.DESIGNS.load(folder.resolve("b.design")).getName());
        assertArrayEquals(source, studio.bytes("a.design"));
        assertArrayEquals(artBefore, studio.bytes(before.getArt()), "the art before is still there to go back to");
        assertTrue(studio.call(UPDATE).out().contains("is up to date"));
    }

    @Test
    void asksBeforeChoicesMadeByHandAreLost() throws Exception {
        change("b.design", design -> {
            Assignment other = DesignFactory.eINSTANCE.createAssignment();
            other.setColour("#123456");
            other.setInk("bare");
            mark(design).getAssignments().add(other);
        });
        otherArt();
        byte[] before = studio.bytes("b.design");
        Studio.Answer answer = studio.call(UPDATE);
        assertEquals(2, answer.code(), answer.out());
        assertEquals(1, answer.errors().size(), answer.err());
        assertTrue(answer.err().contains("loses the inks, ground or left out parts chosen for"), answer.err());
        assertArrayEquals(before, studio.bytes("b.design"));
        assertEquals(0, studio.call("retone", "--update", "b.design", "--force").code());
        assertEquals(1, mark("b.design").getAssignments().size());
    }

    @Test
    void saysWhenTheSourceIsMissing() throws Exception {
        Files.delete(folder.resolve("a.design"));
        Studio.Answer answer = studio.call(UPDATE);
        assertEquals(3, answer.code());
        assertTrue(answer.err().contains("a.design, is missing; put it back"), answer.err());
    }

    @ParameterizedTest
    @CsvSource({"a.design, '', not re-toned from another design", "b.design, --grow, keeps its material",
        "no.design, '', no.design"})
    void refusesInOneSentence(String design, String more, String says) {
        Studio.Answer answer = more.isEmpty() ? studio.call("retone", "--update", design)
                : studio.call("retone", "--update", design, more);
        assertTrue(answer.code() > 1, answer.out());
        assertEquals(1, answer.errors().size(), answer.err());
        assertTrue(answer.err().contains(says), answer.err());
    }
}
