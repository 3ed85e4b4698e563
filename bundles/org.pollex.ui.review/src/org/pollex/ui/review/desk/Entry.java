/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.eclipse.core.resources.IFile;
import org.locationtech.jts.geom.GeometryFactory;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;

/**
 * A finding to settle, or a design that has none.
 *
 * @param file     the design
 * @param finding  on it; one without a check for a design that is clean
 */
record Entry(IFile file, Finding finding) {

    /** An entry for a design that needs no decision, so that it can be signed off too. */
    static Entry clean(IFile file) {
        return new Entry(file, new Finding("", "", Severity.INFO, "", "", OptionalDouble.empty(),
                OptionalDouble.empty(), "", new GeometryFactory().createPoint(),
                "Nothing in this design needs a decision.", List.of(), false));
    }

    /** Whether there is something to settle. */
    boolean open() {
        return !finding.check().isEmpty();
    }

    Path path() {
        return file.getLocation().toPath();
    }
}
