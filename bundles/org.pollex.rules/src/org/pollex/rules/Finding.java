/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Geometry;

/**
 * What a check found, as a plain value.
 *
 * @param check     id of the check, such as {@code line-too-thin}
 * @param kind      finer kind within the check, such as {@code neck}; may be empty
 * @param severity  how bad
 * @param side      name of the face; empty when it concerns the whole design
 * @param region    ink or mark it concerns; may be empty
 * @param measured  measured value, where one has a meaning
 * @param limit     limit it was held against, where one has a meaning
 * @param unit      unit of both, such as mm; may be empty
 * @param where     place in mm on the item; may be an empty geometry
 * @param message   one sentence for people: what, how much, what to do
 * @param fixes     ids of remedies the suite can carry out
 * @param waived    whether the art director waived it
 */
public record Finding(String check, String kind, Severity severity, String side, String region,
        OptionalDouble measured, OptionalDouble limit, String unit, Geometry where, String message,
        List<String> fixes, boolean waived) {

    public Finding {
        fixes = List.copyOf(fixes);
    }
}
