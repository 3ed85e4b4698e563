/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Polygons;

/** A finding that a check is writing. {@link #say} ends it and hands it to the sink; until then nothing is reported. */
public final class FindingDraft {

    private final String check;
    private final Severity severity;
    private final String kind;
    private final Consumer<Finding> taker;
    private String side = "";
    private String region = "";
    private OptionalDouble measured = OptionalDouble.empty();
    private OptionalDouble limit = OptionalDouble.empty();
    private String unit = "";
    private Geometry where = Polygons.empty();
    private final List<String> fixes = new ArrayList<>();

    /**
     * @param check     id of the check that speaks
     * @param severity  how bad
     * @param kind      finer kind within the check; may be empty
     * @param taker     takes the finished finding
     */
    public FindingDraft(String check, Severity severity, String kind, Consumer<Finding> taker) {
        this.check = check;
        this.severity = severity;
        this.kind = kind;
        this.taker = taker;
    }

    /** The face it concerns; left out when it concerns the whole design. */
    public FindingDraft on(String face) {
        side = face;
        return this;
    }

    /** The ink or mark it concerns. */
    public FindingDraft of(String inkOrMark) {
        region = inkOrMark;
        return this;
    }

    /** What was measured and the limit it was held against. */
    public FindingDraft measured(double value, double against, String inUnit) {
        limit = OptionalDouble.of(against);
        return measured(value, inUnit);
    }

    /** What was measured, without a limit. */
    public FindingDraft measured(double value, String inUnit) {
        measured = OptionalDouble.of(value);
        unit = inUnit;
        return this;
    }

    /** The place in mm on the item. */
    public FindingDraft at(Geometry place) {
        where = place;
        return this;
    }

    /** Ids of remedies that the suite can carry out, see {@link Fixes}. */
    public FindingDraft curedBy(String... remedies) {
        fixes.addAll(List.of(remedies));
        return this;
    }

    /** Ends the finding with its sentence for people: what, how much, what to do. */
    public void say(String message) {
        taker.accept(new Finding(check, kind, severity, side, region, measured, limit, unit, where, message, fixes,
                false));
    }
}
