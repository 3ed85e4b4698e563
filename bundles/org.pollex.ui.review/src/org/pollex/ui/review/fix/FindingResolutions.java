/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.fix;

import java.util.List;
import org.eclipse.core.resources.IMarker;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.IMarkerResolutionGenerator2;
import org.pollex.markers.FindingMarkers;
import org.pollex.rules.Finding;

/** The remedies of a finding as resolutions of its marker. */
public final class FindingResolutions implements IMarkerResolutionGenerator2 {

    @Override
    public boolean hasResolutions(IMarker marker) {
        return !marker.getAttribute("fixes", "").isEmpty();
    }

    @Override
    public IMarkerResolution[] getResolutions(IMarker marker) {
        if (!hasResolutions(marker)) {
            return new IMarkerResolution[0];
        }
        Finding finding = FindingMarkers.of(marker);
        List<RemedyResolution> all = finding.fixes().stream().map(each -> new RemedyResolution(marker, each)).toList();
        return all.toArray(IMarkerResolution[]::new);
    }
}
