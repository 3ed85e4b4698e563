/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.pollex.rules.Finding;

/**
 * A finding with the number that the list and the pins share.
 *
 * @param number   from 1
 * @param finding  what was found
 */
record NumberedFinding(int number, Finding finding) {

    /** The findings that are not waived, worst first, numbered. Those of equal severity keep their order. */
    static List<NumberedFinding> of(List<Finding> findings) {
        List<Finding> open = findings.stream().filter(finding -> !finding.waived())
                .sorted(Comparator.comparing(Finding::severity)).toList();
        List<NumberedFinding> numbered = new ArrayList<>();
        for (Finding finding : open) {
            numbered.add(new NumberedFinding(numbered.size() + 1, finding));
        }
        return numbered;
    }

    /** Whether it has a place on a face. */
    boolean on(String face) {
        return finding.side().equals(face) && !finding.where().isEmpty();
    }
}
