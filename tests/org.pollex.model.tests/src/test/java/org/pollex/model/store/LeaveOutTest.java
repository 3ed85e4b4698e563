/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.model.design.Design;
import org.pollex.model.design.TextLine;

/** Files that hold something unknown, opened without it on demand. */
class LeaveOutTest {

    @TempDir
    Path folder;

    private Path file(String text) throws Exception {
        return Files.writeString(folder.resolve("a.design"), text);
    }

    @Test
    void theRestIsThere() throws Exception {
        Path file = file(BadContentTest.design("glitter=\"much\"", "<inks>red<b/></inks>stray\n<sides name=\"front\" "
                + "href=\"x#/\"><layers><marks xsi:type=\"design:Hologram\"/><marks xsi:type=\"design:TextLine\" "
                + "text=\"Lamp\"/><glow/></layers></sides>"));
        List<String> leftOut = new ArrayList<>();
        Opened<Design> opened = ModelFiles.DESIGNS.openWithout(file, leftOut);
        assertEquals(List.of("red"), opened.model().getInks());
        assertEquals(1, opened.model().getSides().get(0).getLayers().get(0).getMarks().size());
        assertEquals("Lamp", ((TextLine) opened.model().getSides().get(0).getLayers().get(0).getMarks().get(0))
                .getText());
        for (String name : List.of("glitter", "<b>", "stray", "href", "Hologram", "<glow>")) {
            assertEquals(1, leftOut.stream().filter(each -> each.contains(name)).count(), name + " in " + leftOut);
        }
        assertEquals(6, leftOut.size(), leftOut.toString());
        ModelFiles.DESIGNS.save(opened);
        assertEquals("Lamp", ((TextLine) ModelFiles.DESIGNS.load(file).getSides().get(0).getLayers().get(0).getMarks()
                .get(0)).getText());
    }

    @Test
    void nothingElseIsForgiven() throws Exception {
        List<String> leftOut = new ArrayList<>();
        assertEquals(StoreException.Reason.BAD_VALUE, assertThrows(StoreException.class, () -> ModelFiles.DESIGNS
                .openWithout(file(BadContentTest.design("", "<glow/><sides/>")), leftOut)).reason());
        assertEquals(StoreException.Reason.DAMAGED, assertThrows(StoreException.class, () -> ModelFiles.DESIGNS
                .openWithout(file("<a"), leftOut)).reason());
        assertEquals(StoreException.Reason.MISSING, assertThrows(StoreException.class, () -> ModelFiles.DESIGNS
                .openWithout(folder.resolve("none.design"), leftOut)).reason());
    }

    @Test
    void aWholeFileLosesNothing() throws Exception {
        List<String> leftOut = new ArrayList<>();
        ModelFiles.DESIGNS.openWithout(file(BadContentTest.design("", "<sides name=\"front\"/>")), leftOut);
        assertTrue(leftOut.isEmpty(), leftOut.toString());
    }
}
