/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.design.Design;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.job.Job;
import org.pollex.model.job.Use;
import org.pollex.model.store.StoreException.Reason;

/** Drafts of format 0 open as format 1 and stay as they are until they are saved. */
class MigrationTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource(FileKind.class)
    void everyOlderFormatHasItsStep(FileKind kind) {
        assertEquals(kind.format(), Migrations.count(kind));
    }

    @Test
    void design() throws Exception {
        Path file = copy("format-0.design");
        byte[] before = Files.readAllBytes(file);
        Opened<Design> opened = ModelFiles.DESIGNS.open(file);
        assertEquals(0, opened.format());
        assertArrayEquals(before, Files.readAllBytes(file));
        Design design = opened.model();
        assertEquals(FileKind.DESIGN.format(), design.getFormat());
        assertEquals(List.of("red", "navy"), design.getInks());
        List<Mark> marks = design.getSides().get(0).getLayers().get(0).getMarks();
        assertEquals("art/ferry.svg", ((Placement) marks.get(0)).getArt());
        assertEquals(0.625, marks.get(0).getScale());
        assertEquals(-30, marks.get(0).getTurn());
        assertEquals(1, marks.get(1).getScale());
        assertEquals(0, marks.get(1).getTurn());
        assertEquals(2, marks.get(2).getScale());
        assertEquals(15, marks.get(2).getTurn());

        ModelFiles.DESIGNS.save(opened);
        String saved = Files.readString(file);
        assertTrue(saved.contains("format=\"1\"") && !saved.contains("zoom"), saved);
        assertEquals(1, ModelFiles.DESIGNS.open(file).format());
        assertArrayEquals(before, Files.readAllBytes(ModelFiles.DESIGNS.lastGood(file).orElseThrow()));
    }

    @Test
    void job() throws Exception {
        Job job = ModelFiles.JOBS.load(copy("format-0.job"));
        assertEquals(LocalDate.of(2026, 6, 1), job.getDue());
        assertEquals(Use.STAGE, job.getUse());
        assertEquals("ferry.design", job.getDesigns().get(0).getPath());
    }

    @Test
    void catalogue() throws Exception {
        Catalogue catalogue = ModelFiles.CATALOGUES.load(copy("format-0.catalogue"));
        assertEquals(new LabColour(80, 5, 20), catalogue.getMaterials().get(0).getLab());
        assertEquals(new LabColour(50, 65, 45), catalogue.getInks().get(0).getLab());
        assertEquals(new LabColour(30, 40, 25), catalogue.getInks().get(0).getLabOverBlack());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "zoom=\"62.5\" | zoom=\"large\"  | <marks> has zoom=\"large\", which is no number; correct it (format 0).",
        "zoom=\"62.5\" | zoom=\"1e999999999\" | which is no number",
        "zoom=\"62.5\" | zoom=\"1\" scale=\"1\" | <marks> has both zoom and scale; remove zoom (format 0).",
        "zoom=\"62.5\" | zoom=\"0\" | scale is \"0\" but must be a number above 0",
        "file=\"art | file=\"x\" art=\"art | has both file and art"})
    void whatCannotBeCarriedOverIsNamed(String old, String replacement, String part) throws Exception {
        String text = read("format-0.design").replace(old, replacement);
        StoreException e = assertThrows(StoreException.class, () -> ModelFiles.DESIGNS.read(
                new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "old.design"));
        assertEquals(Reason.BAD_VALUE, e.reason());
        assertTrue(e.getMessage().startsWith("old.design: line 8, <marks>"), e.getMessage());
        assertTrue(e.getMessage().contains(part), e.getMessage());
    }

    @Test
    void oldNamesAreUnknownInTheNewFormat() throws Exception {
        String text = read("format-0.design").replace(" name=\"Light", " format=\"1\" name=\"Light");
        StoreException e = assertThrows(StoreException.class, () -> ModelFiles.DESIGNS.read(
                new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "new.design"));
        assertEquals(Reason.UNKNOWN_CONTENT, e.reason());
    }

    private Path copy(String name) throws IOException {
        return Files.writeString(folder.resolve(name), read(name));
    }

    private static String read(String name) throws IOException {
        try (InputStream in = MigrationTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
