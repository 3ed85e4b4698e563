/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pollex.model.design.Design;
import org.pollex.model.design.Mark;
import org.pollex.model.design.UnknownMark;
import org.pollex.model.store.StoreException.Reason;

/** A mark of a kind that a newer version wrote comes through an edit here. */
class UnknownMarkTest {

    private static final String SPIRAL = "<marks xsi:type=\"design:Spiral\" id=\"s1\" "
            + "name=\"Shell &amp; &quot;sea&quot;\" x=\"2.0\" turns=\"3\" note=\"a &lt; b &#xA;c\">"
            + "<arm length=\"4\"><step>one &amp; two</step><step/></arm>"
            + "<arm xsi:type=\"design:LongArm\"/></marks>";

    @TempDir
    Path folder;

    private Path file(String marks) throws Exception {
        return Files.writeString(folder.resolve("a.design"), BadContentTest.design("",
                "<sides name=\"front\"><layers id=\"l1\">" + marks + "</layers></sides>"));
    }

    private static List<Mark> marks(Design design) {
        return design.getSides().get(0).getLayers().get(0).getMarks();
    }

    @Test
    void isReadMovedAndWrittenWithAllThatItHolds() throws Exception {
        Path file = file(SPIRAL + "<marks xsi:type=\"design:TextLine\" id=\"t1\" text=\"Lamp\"/>");
        Opened<Design> opened = ModelFiles.DESIGNS.openKeeping(file);
        UnknownMark mark = assertInstanceOf(UnknownMark.class, marks(opened.model()).get(0));
        assertEquals("Spiral", mark.getKind());
        assertEquals("Shell & \"sea\"", mark.getName());
        assertEquals(2, mark.getX());
        mark.setX(-5.5);
        mark.setHidden(true);
        ModelFiles.DESIGNS.save(opened);
        String saved = Files.readString(file);
        assertTrue(saved.contains("turns=\"3\" note=\"a &lt; b &#xA;c\"><arm length=\"4\"><step>one &amp; two</step>"
                + "<step/></arm><arm xsi:type=\"design:LongArm\"/></marks>"), saved);
        assertTrue(saved.contains("xsi:type=\"design:Spiral\"") && saved.contains("x=\"-5.5\"")
                && saved.contains("hidden=\"true\""), saved);
        assertTrue(!saved.contains("UnknownMark") && !saved.contains("kept:"), saved);
        UnknownMark again = assertInstanceOf(UnknownMark.class, marks(ModelFiles.DESIGNS.openKeeping(file).model())
                .get(0));
        assertEquals(mark.getRest(), again.getRest());
        assertEquals(-5.5, again.getX());
    }

    @Test
    void theSameModelGivesTheSameBytesAndReadsBackFromThem() throws Exception {
        Design design = ModelFiles.DESIGNS.openKeeping(file(SPIRAL + SPIRAL.replace("s1", "s2")
                .replace("Spiral", "Star"))).model();
        byte[] once = ModelFiles.DESIGNS.write(design);
        Design again = ModelFiles.DESIGNS.readKeeping(new ByteArrayInputStream(once), "again");
        assertEquals(new String(once, StandardCharsets.UTF_8), new String(ModelFiles.DESIGNS.write(again),
                StandardCharsets.UTF_8));
        assertEquals(List.of("Spiral", "Star"), marks(again).stream().map(each -> ((UnknownMark) each).getKind())
                .toList());
    }

    @Test
    void whoeverPrintsOrChecksIsStillToldThatItIsUnknown() throws Exception {
        Path file = file(SPIRAL);
        assertEquals(Reason.UNKNOWN_CONTENT, assertThrows(StoreException.class,
                () -> ModelFiles.DESIGNS.open(file)).reason());
        assertEquals(Reason.UNKNOWN_CONTENT, assertThrows(StoreException.class,
                () -> ModelFiles.DESIGNS.load(file)).reason());
    }

    @ParameterizedTest
    @ValueSource(strings = {"<marks xsi:type=\"design:Spiral\">words <b/></marks>",
        "<marks xsi:type=\"design:Spiral\" xmi:id=\"_a\"/>",
        "<marks xsi:type=\"design:Spiral\"><b xmlns=\"urn:other\"/></marks>", "<marks xsi:type=\"xmi:Spiral\"/>",
        "<marks xsi:type=\"design:TextLine\" glow=\"1\"/>", "<glow/>"})
    void whatCannotBeKeptWholeIsRefused(String mark) throws Exception {
        Path file = file(mark);
        assertEquals(Reason.UNKNOWN_CONTENT, assertThrows(StoreException.class,
                () -> ModelFiles.DESIGNS.openKeeping(file)).reason());
    }

    @Test
    void badValuesOfWhatEveryMarkHasAreFound() throws Exception {
        assertEquals(Reason.BAD_VALUE, assertThrows(StoreException.class, () -> ModelFiles.DESIGNS.openKeeping(
                file("<marks xsi:type=\"design:Spiral\" x=\"far\"/>"))).reason());
        assertEquals(Reason.BAD_VALUE, assertThrows(StoreException.class, () -> ModelFiles.DESIGNS.openKeeping(
                file("<marks xsi:type=\"design:Spiral\" id=\"l1\"/>"))).reason(), "an id taken already");
        assertEquals(Reason.MISSING, assertThrows(StoreException.class, () -> ModelFiles.DESIGNS.openKeeping(
                folder.resolve("none.design"))).reason());
        assertEquals(Reason.DAMAGED, assertThrows(StoreException.class, () -> ModelFiles.DESIGNS.openKeeping(
                Files.writeString(folder.resolve("b.design"), "<a"))).reason());
    }
}
