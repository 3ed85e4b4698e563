/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.tree;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.pollex.markers.FindingMarkers;

/** How many findings stand on a design, from its markers. */
record Counts(int errors, int warnings, int waived) {

    static final Counts NONE = new Counts(0, 0, 0);

    /** Of all files below a folder that have any. */
    static Map<IResource, Counts> below(IContainer folder) throws CoreException {
        Map<IResource, Counts> counts = new HashMap<>();
        for (IMarker marker : folder.findMarkers(FindingMarkers.TYPE, true, IResource.DEPTH_INFINITE)) {
            int severity = marker.getAttribute(IMarker.SEVERITY, IMarker.SEVERITY_INFO);
            Counts one = marker.getAttribute("waived", false) ? new Counts(0, 0, 1)
                    : severity == IMarker.SEVERITY_ERROR ? new Counts(1, 0, 0)
                    : severity == IMarker.SEVERITY_WARNING ? new Counts(0, 1, 0) : NONE;
            counts.merge(marker.getResource(), one, Counts::plus);
        }
        return counts;
    }

    Counts plus(Counts other) {
        return new Counts(errors + other.errors, warnings + other.warnings, waived + other.waived);
    }

    Badge badge() {
        return errors > 0 ? Badge.ERROR : warnings > 0 ? Badge.WARNING : Badge.NONE;
    }

    String words() {
        List<String> words = new ArrayList<>();
        add(words, errors, errors == 1 ? " error" : " errors");
        add(words, warnings, warnings == 1 ? " warning" : " warnings");
        add(words, waived, " waived");
        return String.join(", ", words);
    }

    private static void add(List<String> words, int count, String name) {
        if (count > 0) {
            words.add(count + name);
        }
    }
}
