/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.crowd;

import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.pollex.geometry.shape.Hull;

/**
 * Marks of a side that stay together, because they lie over one another or because there are too many to be told
 * apart.
 *
 * @param marks      ids of the marks, lowest first
 * @param name       what people call it
 * @param lettering  whether all of it is lettering
 * @param hull       hull of what it paints, mm on the item
 * @param need       the scale, as a factor on its present size, from which its detail holds; 0 when nothing of it is
 *                   near a limit
 * @param detail     what asks for that scale
 */
public record MarkGroup(List<String> marks, String name, boolean lettering, Hull hull, double need, Detail detail) {

    public MarkGroup {
        marks = List.copyOf(marks);
    }

    /** What people call the detail that asks for the scale. */
    public String word() {
        return lettering && detail != Detail.NONE ? Detail.LETTERING.word() : detail.word();
    }

    /** What to do about it in the art, as an order. */
    public String cure() {
        return lettering && detail != Detail.NONE ? Detail.LETTERING.cure() : detail.cure();
    }

    /** Box of what it paints, mm on the item. */
    public Envelope box() {
        return hull.polygon().getEnvelopeInternal();
    }
}
