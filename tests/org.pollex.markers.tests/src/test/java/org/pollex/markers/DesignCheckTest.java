/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.markers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Side;
import org.pollex.model.job.Job;
import org.pollex.model.job.JobFactory;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ModelFiles;
import org.pollex.rules.Contributions;
import org.pollex.rules.Finding;
import org.pollex.rules.Suite;
import org.pollex.rules.waiver.Waivers;

/** What is said of a saved design, with what its job waives, and which designs a file of art concerns. */
class DesignCheckTest {

    /** A line of 0.12 mm on a pad print that holds 0.15 mm. */
    private static final String LINE = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10mm\" height=\"4mm\" "
            + "viewBox=\"0 0 10 4\"><path d=\"M0 2h10v0.12h-10z\" fill=\"#1b3a5c\"/></svg>";

    private static Suite suite;

    @TempDir
    Path folder;

    private Path file;

    @BeforeAll
    static void install() {
        suite = Suite.of(Contributions.fromClassPath(DesignCheckTest.class.getClassLoader()));
        assertEquals(List.of(), suite.problems());
    }

    @BeforeEach
    void design() throws Exception {
        Path art = folder.resolve("art/lines/line.svg");
        Files.createDirectories(art.getParent());
        Files.write(art, LINE.getBytes(StandardCharsets.UTF_8));
        file = folder.resolve("buoy.design");
        Design design = DesignFactory.eINSTANCE.createDesign();
        design.setName("Buoy");
        design.setProduct("standard-pick");
        design.setMaterial("solid-yellow");
        design.setMethod("pad-one-colour");
        design.getInks().add("navy");
        Side side = DesignFactory.eINSTANCE.createSide();
        side.setName("front");
        Layer layer = DesignFactory.eINSTANCE.createLayer();
        Placement placement = DesignFactory.eINSTANCE.createPlacement();
        placement.setArt("art/lines/line.svg");
        placement.setSha256(ArtFiles.sha256(art));
        layer.getMarks().add(placement);
        side.getLayers().add(layer);
        design.getSides().add(side);
        ModelFiles.DESIGNS.create(design, file);
    }

    private List<Finding> thin() throws Exception {
        DesignCheck check = DesignCheck.of(file, suite);
        assertTrue(check.trouble().isEmpty(), check.trouble().toString());
        return check.findings().stream().filter(each -> each.check().equals("line-too-thin")).toList();
    }

    @Test
    void whatTheJobWaivesIsMarkedSo() throws Exception {
        List<Finding> thin = thin();
        assertEquals(1, thin.size());
        assertEquals(0.12, thin.get(0).measured().orElseThrow(), 0.003);
        assertFalse(thin.get(0).waived());
        Job job = JobFactory.eINSTANCE.createJob();
        job.setName("Buoys");
        job.getWaivers().add(Waivers.waive(thin.get(0), "buoy.design", "a hairline is meant", "Ada",
                Instant.parse("2026-03-01T10:00:00Z")));
        ModelFiles.JOBS.create(job, folder.resolve("buoys.job"));
        assertTrue(thin().get(0).waived());
    }

    @Test
    void whatCannotBeReadIsOneSentence() throws Exception {
        Files.writeString(file, "<no");
        DesignCheck check = DesignCheck.of(file, suite);
        assertEquals(List.of(), check.findings());
        assertTrue(check.trouble().orElseThrow().contains("buoy.design"), check.trouble().toString());
    }

    @Test
    void artThatIsNotTheOnePlacedIsTold() throws Exception {
        Files.writeString(folder.resolve("art/lines/line.svg"), LINE.replace("0.12", "0.5"));
        DesignCheck check = DesignCheck.of(file, suite);
        assertEquals(List.of(), check.findings());
        assertTrue(check.trouble().orElseThrow().contains("line.svg"), check.trouble().toString());
    }

    @Test
    void artConcernsTheDesignsThatPlaceIt() throws Exception {
        Path folders = folder.toAbsolutePath().normalize();
        assertTrue(ArtUse.uses(file, Set.of(folders.resolve("art/lines/line.svg"))));
        assertFalse(ArtUse.uses(file, Set.of(folders.resolve("art/line.svg"), folders.resolve("out/proof.pdf"))));
        Files.delete(folder.resolve("art/lines/line.svg"));
        assertTrue(ArtUse.uses(file, Set.of(folders.resolve("art/lines/line.svg"))), "also when it is gone");
        Files.writeString(file, "<no");
        assertTrue(ArtUse.uses(file, Set.of()), "nobody knows what a broken design places");
    }
}
