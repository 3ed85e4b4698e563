/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import org.pollex.print.Printed;
import org.pollex.rules.Contributions;
import org.pollex.rules.Suite;

class SampleJobPrintTest {

    @TempDir
    private Path here;

    private SampleJob sample() {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
        return new SampleJob(new Session(nowhere, nowhere, here, Suite.of(Contributions.fromClassPath(
                SampleJobPrintTest.class.getClassLoader())), LocalDate.of(2026, 6, 1), false));
    }

    private static List<Path> left() throws Exception {
        try (Stream<Path> all = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            return all.filter(each -> each.getFileName().toString().startsWith("pollex-sample")).toList();
        }
    }

    @Test
    void allDesignsPrintAndNothingStaysOnTheDisk() throws Exception {
        List<Path> before = left();
        List<Printed> printed = sample().printed(piece -> { });
        assertEquals(SampleDesigns.ALL.size(), printed.size());
        printed.forEach(each -> assertTrue(each.sides().get(0).printed().getArea() > 20, each.design().getName()));
        assertEquals(before, left());
        try (Stream<Path> inside = Files.list(here)) {
            assertEquals(0, inside.count());
        }
    }

    @Test
    void whatIsStoppedLeavesNothingEither() throws Exception {
        List<Path> before = left();
        int[] pieces = {0};
        assertThrows(Refusal.class, () -> sample().printed(piece -> {
            if (++pieces[0] == 4) {
                throw Refusal.wrongUse("Stopped.");
            }
        }));
        assertEquals(before, left());
    }
}
