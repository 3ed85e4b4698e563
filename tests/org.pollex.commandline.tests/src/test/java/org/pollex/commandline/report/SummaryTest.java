/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.report;

import org.pollex.output.report.CheckedDesign;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class SummaryTest {

    @Test
    void tellsFewDesignsWithTheirFindings() {
        assertEquals(List.of("jobs/Tour \u00fc/a b.design: 1 error, 1 warning, 1 waived",
                "  error line-too-thin, front: Too thin: \"<0.15\" & 'so'.", "  warning too-many-inks: Five inks.",
                "/abs/c.design: clean", "3 designs checked: 1 with errors, 0 with warnings, 1 clean, 1 not readable."),
                Summary.of(SampleFindings.ALL));
    }

    @Test
    void staysShortForMany() {
        List<CheckedDesign> many = new ArrayList<>(Collections.nCopies(500, SampleFindings.MIXED));
        many.addAll(Collections.nCopies(500, SampleFindings.CLEAN));
        List<String> lines = Summary.of(many);
        assertEquals(42, lines.size());
        assertEquals("and 460 more designs with findings", lines.get(40));
        assertEquals("1000 designs checked: 500 with errors, 0 with warnings, 500 clean.", lines.get(41));
    }

    @Test
    void cutsLongListsOfFindings() {
        CheckedDesign crowded = new CheckedDesign("d.design", "p", "m", "w",
                Collections.nCopies(20, SampleFindings.FULL), "", 1);
        List<String> lines = Summary.of(List.of(crowded));
        assertEquals("d.design: 20 errors", lines.get(0));
        assertTrue(lines.contains("  and 12 more"), lines.toString());
    }

    @Test
    void failsOnlyOnWhatIsNotWaived() {
        CheckedDesign waived = new CheckedDesign("d.design", "p", "m", "w", List.of(SampleFindings.WAIVED), "", 1);
        assertEquals(false, FailOn.WARNING.fails(waived));
        assertEquals(true, FailOn.ERROR.fails(SampleFindings.MIXED));
        assertEquals(false, FailOn.NEVER.fails(SampleFindings.MIXED));
    }
}
