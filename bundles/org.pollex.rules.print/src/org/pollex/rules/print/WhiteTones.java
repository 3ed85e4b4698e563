/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.List;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.print.InkRegion;
import org.pollex.print.PrintedTones;
import org.pollex.print.ShownArea;

/**
 * An area of ink that should have white below it, with and without.
 *
 * @param on       its colour on white
 * @param off      its colour on the bare material
 * @param differs  CIEDE2000 between the two: what the white is worth
 * @param stands   CIEDE2000 between its colour without white and the bare material
 */
record WhiteTones(Lab on, Lab off, double differs, double stands) {

    static WhiteTones of(PrintedTones tones, InkRegion region) {
        Lab on = tones.of(new ShownArea(List.of(region), true, region.area()));
        Lab off = tones.of(new ShownArea(List.of(region), false, region.area()));
        return new WhiteTones(on, off, DeltaE.ciede2000(on, off), DeltaE.ciede2000(off, tones.ground()));
    }
}
