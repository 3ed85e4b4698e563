/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.commandline.Main;
import org.pollex.commandline.Studio;
import org.pollex.making.desk.Desk;
import org.pollex.making.session.Session;
import org.pollex.model.job.Job;
import org.pollex.model.job.JobDesign;
import org.pollex.model.job.JobFactory;
import org.pollex.model.store.ModelFiles;
import org.pollex.rules.Finding;
import org.pollex.rules.waiver.Waivers;

/** What a job adds to a check: waivers; and what a terminal adds: progress. */
class JobCheckTest {

    @TempDir
    private Path folder;
    private Studio studio;
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @BeforeEach
    void open() throws Exception {
        studio = new Studio(folder);
        studio.write("hairline.svg", Studio.hairline());
        studio.make("job/deep/thin.design", "--front", "hairline.svg", "--largest");
    }

    private Session session(boolean terminal) {
        return new Session(new PrintStream(new ByteArrayOutputStream()),
                new PrintStream(err, true, StandardCharsets.UTF_8), folder, Studio.SUITE, Studio.TODAY, terminal);
    }

    private void waiveAll(String job, String design) throws Exception {
        Desk desk = new Desk(session(false));
        List<Finding> findings = desk.findings(desk.open(folder.resolve("job/deep/thin.design")));
        assertFalse(findings.isEmpty());
        Job model = JobFactory.eINSTANCE.createJob();
        JobDesign entry = JobFactory.eINSTANCE.createJobDesign();
        entry.setPath(design);
        model.getDesigns().add(entry);
        for (Finding finding : findings) {
            model.getWaivers().add(Waivers.waive(finding, design, "It is meant as a hairline.", "The art director",
                    Instant.parse("2026-11-20T10:00:00Z")));
        }
        ModelFiles.JOBS.create(model, folder.resolve(job));
    }

    @Test
    void honoursWaiversOfTheJobInTheFolder() throws Exception {
        assertEquals(1, studio.call("check", "job").code());
        waiveAll("job/deep/tour.job", "thin.design");
        Studio.Answer answer = studio.call("check", "job", "--json", "r.json", "--sarif", "r.sarif");
        assertEquals(0, answer.code(), answer.out());
        assertTrue(answer.out().contains("waived"), answer.out());
        assertTrue(studio.text("r.json").contains("\"waived\": true"));
        assertFalse(studio.text("r.json").contains("\"waived\": false"));
        assertTrue(studio.text("r.sarif").contains("\"suppressions\""));
    }

    @Test
    void honoursWaiversOfAJobFartherUpThatListsTheDesign() throws Exception {
        waiveAll("job/tour.job", "deep/thin.design");
        assertEquals(0, studio.call("check", "job/deep/thin.design").code());
        assertEquals(0, studio.call("check", "job/tour.job").code());
    }

    @Test
    void leavesOutWaiversOfAJobThatDoesNotListTheDesign() throws Exception {
        waiveAll("job/tour.job", "other.design");
        assertEquals(1, studio.call("check", "job/deep/thin.design").code());
    }

    @Test
    void aWaiverEndsWhenTheDesignChangesAtThatPlace() throws Exception {
        waiveAll("job/deep/tour.job", "thin.design");
        String design = studio.text("job/deep/thin.design");
        studio.write("job/deep/thin.design", design.replaceAll("scale=\"[^\"]+\"", "scale=\"1.4\""));
        assertEquals(1, studio.call("check", "job").code());
    }

    @Test
    void tellsAJobThatCannotBeRead() {
        studio.write("job/deep/tour.job", "no job");
        Studio.Answer answer = studio.call("check", "job/deep/thin.design");
        assertEquals(3, answer.code());
        assertTrue(answer.err().contains("tour.job"), answer.err());
    }

    @Test
    void showsProgressOnATerminalOnly() {
        studio.make("job/deep/more.design", "--front", "hairline.svg");
        Main.run(new String[] {"check", "job"}, session(true));
        String said = err.toString(StandardCharsets.UTF_8);
        assertTrue(said.contains("\r1 of 2") && said.contains("\r2 of 2"), said);
        err.reset();
        Main.run(new String[] {"check", "job"}, session(false));
        assertEquals("", err.toString(StandardCharsets.UTF_8));
    }
}
