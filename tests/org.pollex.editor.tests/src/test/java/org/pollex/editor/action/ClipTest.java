/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.action;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Placement;
import org.pollex.model.store.ArtFile;
import org.pollex.model.store.ArtFiles;

class ClipTest {

    @TempDir
    Path folder;

    @Test
    void marksAndTheirArtGoToAnotherFolder() throws Exception {
        Path bee = Files.writeString(folder.resolve("bee.svg"), "<svg/>");
        Path from = Files.createDirectories(folder.resolve("one job")).resolve("hive.design");
        Path to = Files.createDirectories(folder.resolve("two")).resolve("comb.design");
        ArtFile art = ArtFiles.adopt(from, bee);
        Placement mark = DesignFactory.eINSTANCE.createPlacement();
        mark.setName("Bee");
        mark.setArt(art.path());
        mark.setSha256(art.sha256());
        mark.setX(1.25);
        Clip clip = Clip.read(Clip.write(from, List.of(mark))).orElseThrow();
        assertEquals(from.toAbsolutePath(), clip.from());
        Placement read = (Placement) clip.marks().get(0);
        assertEquals(1.25, read.getX());
        assertEquals("Bee", read.getName());
        clip.bringArt(to);
        assertEquals(-1, Files.mismatch(bee, to.resolveSibling(read.getArt())));
    }

    @Test
    void otherTextHoldsNoMarks() throws Exception {
        assertTrue(Clip.read("harbour brass band").isEmpty());
        assertTrue(Clip.read("pollex-marks nowhere\n<design/>").isEmpty());
    }
}
