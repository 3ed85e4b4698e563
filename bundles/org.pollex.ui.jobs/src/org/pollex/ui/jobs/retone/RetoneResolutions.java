/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.retone;

import org.eclipse.core.resources.IMarker;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.IMarkerResolution2;
import org.eclipse.ui.IMarkerResolutionGenerator;
import org.eclipse.ui.PlatformUI;

/** The way out for a design that reads as a negative on its material: its re-toned sibling for the same material. */
public final class RetoneResolutions implements IMarkerResolutionGenerator {

    @Override
    public IMarkerResolution[] getResolutions(IMarker marker) {
        return new IMarkerResolution[] {new Resolution()};
    }

    private static final class Resolution implements IMarkerResolution2 {

        @Override
        public String getLabel() {
            return "Re-tone for this material\u2026";
        }

        @Override
        public String getDescription() {
            return "Makes a second design in which light stays light and dark stays dark; this one stays as it is.";
        }

        @Override
        public Image getImage() {
            return null;
        }

        @Override
        public void run(IMarker marker) {
            if (marker.getResource().getLocation() != null) {
                RetoneWizard.openForOwnMaterial(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell(),
                        marker.getResource().getLocation().toPath());
            }
        }
    }
}
