/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.fix;

import java.util.List;
import java.util.stream.Stream;
import org.eclipse.core.resources.IMarker;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.IMarkerResolutionGenerator2;
import org.pollex.markers.FindingMarkers;
import org.pollex.rules.Finding;
import org.pollex.ui.wayout.WaysOut;

/** The remedies of a finding, and the ways out of it, as resolutions of its marker. */
public final class FindingResolutions implements IMarkerResolutionGenerator2 {

    private static final String FIXES = "fixes";

    @Override
    public boolean hasResolutions(IMarker marker) {
        return !marker.getAttribute(FIXES, "").isEmpty() || !ways(marker).isEmpty();
    }

    private static List<WaysOut.Offer> ways(IMarker marker) {
        return marker.getResource().getLocation() == null ? List.of() : WaysOut.of(marker.getAttribute("check", ""));
    }

    @Override
    public IMarkerResolution[] getResolutions(IMarker marker) {
        if (!hasResolutions(marker)) {
            return new IMarkerResolution[0];
        }
        Finding finding = FindingMarkers.of(marker);
        return Stream.<IMarkerResolution>concat(
                finding.fixes().stream().map(each -> new RemedyResolution(marker, each)),
                ways(marker).stream().map(WayOutResolution::new)).toArray(IMarkerResolution[]::new);
    }
}
