/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.report;

import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.pollex.output.report.CheckedDesign;
import org.pollex.output.report.RuleText;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;

/** Findings and checked designs put together by hand. */
final class SampleFindings {

    static final Finding FULL = new Finding("line-too-thin", "neck", Severity.ERROR, "front", "white",
            OptionalDouble.of(0.000012345), OptionalDouble.of(0.15), "mm",
            wkt("POLYGON ((0 0, 1.00000049 0, 1 1.5, 0 0))"), "Too thin: \"<0.15\" & 'so'.", List.of("scale-up"),
            false);

    static final Finding BARE = new Finding("too-many-inks", "", Severity.WARNING, "", "", OptionalDouble.empty(),
            OptionalDouble.empty(), "", wkt("POLYGON EMPTY"), "Five inks.", List.of(), false);

    static final Finding WAIVED = new Finding("speck", "", Severity.ERROR, "back", "", OptionalDouble.of(3),
            OptionalDouble.empty(), "", wkt("POINT (1 2)"), "A speck.", List.of(), true);

    static final CheckedDesign MIXED = new CheckedDesign("jobs/Tour \u00fc/a b.design", "standard-pick", "solid-black",
            "pad-spot", List.of(FULL, BARE, WAIVED), "", 12);

    static final CheckedDesign CLEAN = new CheckedDesign("/abs/c.design", "standard-pick", "solid-white", "pad-spot",
            List.of(), "", 3);

    static final CheckedDesign BROKEN = CheckedDesign.unreadable("x:y.design", "x:y.design: the file is empty.", 1);

    static final List<CheckedDesign> ALL = List.of(MIXED, CLEAN, BROKEN);

    static final List<RuleText> RULES = List.of(new RuleText("line-too-thin", "Line too thin", "Thin lines break."),
            new RuleText("speck", "Speck", "Dots get lost."));

    private SampleFindings() {
    }

    static Geometry wkt(String text) {
        try {
            return new WKTReader().read(text);
        } catch (ParseException e) {
            throw new IllegalArgumentException(e);
        }
    }
}
