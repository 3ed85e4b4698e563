/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.job;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pollex.making.session.Refusal;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.job.Job;
import org.pollex.model.job.JobDesign;
import org.pollex.model.job.Use;
import org.pollex.model.store.ModelFiles;

class JobMakerTest {

    private static final JobFacts SUMMER = new JobFacts("Summer season", "Skerry Light Ferries", Use.STAGE, 400,
            Optional.of(LocalDate.of(2026, 7, 1)), "");

    @TempDir
    Path folder;

    private Path made() throws Exception {
        return JobMaker.make(folder.resolve("season"), SUMMER);
    }

    private static Path design(Path job, String name) throws Exception {
        Path file = job.resolveSibling(name + ".design");
        ModelFiles.DESIGNS.create(DesignFactory.eINSTANCE.createDesign(), file);
        return file;
    }

    private static List<String> listed(Path job) throws Exception {
        return ModelFiles.JOBS.load(job).getDesigns().stream().map(JobDesign::getPath).toList();
    }

    @Test
    void aJobHasItsFileArtAndOutput() throws Exception {
        Path file = made();
        assertEquals("summer-season.job", file.getFileName().toString());
        Job job = ModelFiles.JOBS.load(file);
        assertEquals(SUMMER, JobFacts.of(job));
        assertTrue(Files.isDirectory(file.resolveSibling("art")));
        assertTrue(Files.isDirectory(file.resolveSibling("out")));
    }

    @Test
    void aSecondJobInAFolderIsRefusedAndNothingChanges() throws Exception {
        Path file = made();
        byte[] before = Files.readAllBytes(file);
        Refusal refused = assertThrows(Refusal.class, () -> JobMaker.make(file.getParent(), SUMMER));
        assertTrue(refused.getMessage().contains("holds a job already"), refused.getMessage());
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void nothingIsLeftOfAJobThatCannotBeWritten() throws Exception {
        Path plain = Files.write(folder.resolve("plain"), new byte[1]);
        assertThrows(Refusal.class, () -> JobMaker.make(plain.resolve("deeper"), SUMMER));
        assertThrows(Refusal.class, () -> JobMaker.make(plain, SUMMER));
        assertEquals(1, Files.size(plain));
    }

    @Test
    void otherFactsKeepTheListOfDesigns() throws Exception {
        Path job = made();
        JobMaker.enlist(design(job, "skerry"));
        JobFacts winter = new JobFacts("Winter", "", Use.PRACTICE, 0, Optional.empty(), "later");
        JobMaker.change(job, winter);
        assertEquals(winter, JobFacts.of(ModelFiles.JOBS.load(job)));
        assertEquals(List.of("skerry.design"), listed(job));
    }

    @Test
    void aListIsBegunWithTheFirstDesignOnly() throws Exception {
        Path job = made();
        Path first = design(job, "first");
        JobMaker.enlist(first);
        JobMaker.enlist(first);
        JobMaker.enlist(design(job, "second"));
        assertEquals(List.of("first.design", "second.design"), listed(job));
    }

    @Test
    void aJobThatMeansAllItsDesignsGoesOnMeaningThem() throws Exception {
        Path job = made();
        design(job, "first");
        JobMaker.enlist(design(job, "second"));
        assertEquals(List.of(), listed(job));
    }

    @Test
    void aDesignOutsideAJobIsLeftAlone() throws Exception {
        Path lone = design(folder.resolve("no.job"), "lone");
        JobMaker.enlist(lone);
        assertFalse(Files.exists(folder.resolve("no.job")));
    }

    @Test
    void artIsCopiedByteForByteAndOnce() throws Exception {
        Path job = made();
        Path art = Files.write(folder.resolve("Lamp Rock.svg"), "<svg/>\r\n".getBytes(StandardCharsets.UTF_8));
        Path copy = JobMaker.bringIn(job.getParent(), art);
        assertEquals(job.resolveSibling("art").resolve("Lamp Rock.svg"), copy);
        assertArrayEquals(Files.readAllBytes(art), Files.readAllBytes(copy));
        assertEquals(copy, JobMaker.bringIn(job.getParent(), art));
    }

    @ParameterizedTest
    @CsvSource({"Summer season,summer-season", "'  Öre & Å! ',öre-å", "'...',job", "'../up',up", "CON 2,con-2"})
    void aTitleMakesAFileName(String title, String name) {
        assertEquals(name, JobMaker.fileName(title));
    }
}
