/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.width.WidthPlace;

/**
 * Re-toned art.
 *
 * @param light      what the light ink prints; valid, mm, in the coordinates of the art
 * @param threshold  lightness (L*) from which colours count as light
 * @param done       what was done, one sentence each
 * @param broken     lines and gaps that are still below the limits, by the width field of the result
 */
public record Retoned(Geometry light, double threshold, List<String> done, List<WidthPlace> broken) {

    public Retoned {
        done = List.copyOf(done);
        broken = List.copyOf(broken);
    }
}
