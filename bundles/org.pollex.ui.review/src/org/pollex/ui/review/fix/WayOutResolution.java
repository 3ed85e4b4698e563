/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.fix;

import org.eclipse.core.resources.IMarker;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.IMarkerResolution2;
import org.eclipse.ui.PlatformUI;
import org.pollex.ui.wayout.WaysOut;

/** A way out of a finding, taken from its marker. */
final class WayOutResolution implements IMarkerResolution2 {

    private final WaysOut.Offer way;

    WayOutResolution(WaysOut.Offer way) {
        this.way = way;
    }

    @Override
    public String getLabel() {
        return way.label();
    }

    @Override
    public String getDescription() {
        return way.description();
    }

    @Override
    public Image getImage() {
        return null;
    }

    @Override
    public void run(IMarker marker) {
        way.take(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage(),
                marker.getResource().getLocation().toPath());
    }
}
