/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.review;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.job.Job;
import org.pollex.model.job.JobFactory;
import org.pollex.model.job.Revision;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;

/** Waive, send back, revise, sign off, begin anew; and what each refuses. */
class JobReviewTest {

    private static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");

    @TempDir
    Path folder;
    private Path design;
    private JobReview review;

    @BeforeEach
    void make() throws Exception {
        Job job = JobFactory.eINSTANCE.createJob();
        job.setName("Spring sailing");
        ModelFiles.JOBS.create(job, folder.resolve("spring.job"));
        Design made = DesignFactory.eINSTANCE.createDesign();
        made.setName("Pick");
        design = folder.resolve("pick.design");
        ModelFiles.DESIGNS.create(made, design);
        review = JobReview.of(design, Clock.fixed(NOON, ZoneOffset.UTC)).orElseThrow();
    }

    private static Finding finding(double x) {
        return new Finding("line-too-thin", "line", Severity.ERROR, "front", "navy", OptionalDouble.of(0.1),
                OptionalDouble.of(0.15), "mm", new GeometryFactory().createPoint(new Coordinate(x, 0)), "Thin.",
                List.of(), false);
    }

    private void rename(String name) throws Exception {
        Opened<Design> opened = ModelFiles.DESIGNS.open(design);
        opened.model().setName(name);
        ModelFiles.DESIGNS.save(opened);
    }

    @Test
    void aWaiverCoversItsPlaceOnlyAndCanBeTakenBack() throws Exception {
        review.waive(design, finding(1), "The rope is meant to be faint.", "Ada");
        assertEquals(List.of(true, false), review.apply(design, List.of(finding(1), finding(9))).stream()
                .map(Finding::waived).toList());
        assertEquals("Ada", review.waiver(design, finding(1)).orElseThrow().getWho());
        assertEquals(NOON, review.waiver(design, finding(1)).orElseThrow().getWhen());
        review.waive(design, finding(1), "Agreed with the client.", "Ada");
        assertEquals(1, review.read().getWaivers().size());
        review.takeBack(design, finding(1));
        assertFalse(review.apply(design, List.of(finding(1))).get(0).waived());
    }

    @Test
    void withoutReasonOrNameNothingIsWaived() throws Exception {
        byte[] before = Files.readAllBytes(review.job());
        assertThrows(IllegalArgumentException.class, () -> review.waive(design, finding(1), " ", "Ada"));
        assertThrows(IllegalArgumentException.class, () -> review.waive(design, finding(1), "So.", ""));
        assertArrayEquals(before, Files.readAllBytes(review.job()));
    }

    @Test
    void aSignedRevisionLocksUntilAnotherIsBegun() throws Exception {
        assertEquals(ReviewState.NEW, review.state(design));
        assertEquals(1, review.revise("Ada"));
        assertEquals(ReviewState.WAITING, review.state(design));
        assertTrue(review.locked(design).isEmpty());
        review.signOff("Ada", "Good.");
        assertEquals(ReviewState.SIGNED, review.state(design));
        assertTrue(review.locked(design).orElseThrow().contains("Revision 1 was signed off by Ada"));
        assertEquals(2, review.begin("Ada"));
        assertTrue(review.locked(design).isEmpty());
        assertEquals(ReviewState.NEW, review.state(design));
    }

    @Test
    void theCopyOfARevisionIsTheDesignAsItWas() throws Exception {
        byte[] before = Files.readAllBytes(design);
        review.revise("Ada");
        rename("Other");
        assertEquals(ReviewState.CHANGED, review.state(design));
        Path copy = folder.resolve("revisions").resolve("1").resolve("pick.design");
        assertArrayEquals(before, Files.readAllBytes(copy));
        Revision revision = JobReview.newest(review.read()).orElseThrow();
        assertEquals(List.of(), review.broken(revision));
        Files.writeString(copy, "tampered");
        assertEquals(List.of("pick.design"), review.broken(revision));
    }

    @Test
    void whatChangedSinceItsRevisionIsNotSigned() throws Exception {
        review.revise("Ada");
        rename("Other");
        IllegalStateException refused = assertThrows(IllegalStateException.class, () -> review.signOff("Ada", ""));
        assertTrue(refused.getMessage().contains("pick.design"), refused.getMessage());
        assertEquals(ReviewState.CHANGED, review.state(design));
    }

    @Test
    void aRevisionWithoutDesignsIsNeitherSignedNorSentBack() throws Exception {
        review.revise("Ada");
        review.signOff("Ada", "");
        review.begin("Ada");
        byte[] before = Files.readAllBytes(review.job());
        assertThrows(IllegalStateException.class, () -> review.signOff("Ada", ""));
        assertThrows(IllegalStateException.class, () -> review.sendBack("Too small.", "Ada"));
        assertArrayEquals(before, Files.readAllBytes(review.job()));
        assertEquals(3, review.revise("Ada"));
        review.signOff("Ada", "");
        assertEquals(ReviewState.SIGNED, review.state(design));
    }

    @Test
    void aRevisionWhoseCopyWasAlteredIsNotSigned() throws Exception {
        review.revise("Ada");
        Files.writeString(folder.resolve("revisions").resolve("1").resolve("pick.design"), "tampered");
        IllegalStateException refused = assertThrows(IllegalStateException.class, () -> review.signOff("Ada", ""));
        assertTrue(refused.getMessage().contains("pick.design"), refused.getMessage());
        assertEquals(ReviewState.WAITING, review.state(design));
    }

    @Test
    void aRevisionThatWaitsIsNotPassedOver() throws Exception {
        assertThrows(IllegalStateException.class, () -> review.begin("Ada"));
        review.revise("Ada");
        byte[] before = Files.readAllBytes(review.job());
        assertThrows(IllegalStateException.class, () -> review.begin("Ada"));
        assertArrayEquals(before, Files.readAllBytes(review.job()));
        assertEquals(ReviewState.WAITING, review.state(design));
    }

    @Test
    void sentBackWithANote() throws Exception {
        assertThrows(IllegalStateException.class, () -> review.sendBack("Too small.", "Ada"));
        review.revise("Ben");
        assertThrows(IllegalArgumentException.class, () -> review.sendBack("", "Ada"));
        review.sendBack("The lettering is too small.", "Ada");
        assertEquals(ReviewState.SENT_BACK, review.state(design));
        assertEquals("Ada: The lettering is too small.", JobReview.newest(review.read()).orElseThrow().getNote());
        assertThrows(IllegalStateException.class, () -> review.signOff("Ada", ""));
        assertEquals(2, review.revise("Ben"));
        assertEquals(ReviewState.WAITING, review.state(design));
    }
}
