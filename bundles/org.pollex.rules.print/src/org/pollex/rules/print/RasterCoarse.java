/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import org.pollex.print.PrintedRaster;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/** Do pictures of pixels have enough of them at their size on the item? Held against shares of the resolution. */
public final class RasterCoarse implements Check {

    @Override
    public void check(CheckContext context, FindingSink sink) {
        double resolution = context.printed().method().getResolution();
        double warning = resolution * context.setting("raster-coarse.warning-share");
        double error = resolution * context.setting("raster-coarse.error-share");
        for (SideMeasures side : context.sides()) {
            for (PrintedRaster raster : side.side().rasters()) {
                if (raster.resolution() >= warning) {
                    continue;
                }
                Severity severity = raster.resolution() < error ? Severity.ERROR : Severity.WARNING;
                sink.found(severity, "").on(side.name()).of(raster.mark()).measured(raster.resolution(),
                        severity == Severity.ERROR ? error : warning, "ppi").at(raster.where())
                        .say("The picture has " + Measures.number(raster.resolution(), 0) + " pixels an inch at this "
                                + "size, but needs " + Measures.number(warning, 0) + " to look sharp; make it smaller "
                                + "or ask the client for drawn art.");
            }
        }
    }
}
