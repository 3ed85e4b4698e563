/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.fix;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.markers.WorkbenchMarkerResolution;
import org.pollex.fixes.Remedies;
import org.pollex.markers.FindingMarkers;
import org.pollex.rules.Finding;

/**
 * One remedy for the findings of some markers. A design that is open is changed in its editor, where it can be taken
 * back as one step; one that is closed is changed and saved in the background.
 */
final class RemedyResolution extends WorkbenchMarkerResolution {

    private final IMarker marker;
    private final String remedy;

    RemedyResolution(IMarker marker, String remedy) {
        this.marker = marker;
        this.remedy = remedy;
    }

    @Override
    public String getLabel() {
        return Remedies.label(remedy);
    }

    @Override
    public String getDescription() {
        return Remedies.label(remedy) + ", as one step that can be undone while the design is open.";
    }

    @Override
    public Image getImage() {
        return null;
    }

    @Override
    public IMarker[] findOtherMarkers(IMarker[] markers) {
        return Arrays.stream(markers).filter(each -> !each.equals(marker) && List.of(each.getAttribute("fixes", "")
                .split(" ")).contains(remedy)).toArray(IMarker[]::new);
    }

    @Override
    public void run(IMarker only) {
        run(new IMarker[] {only}, null);
    }

    @Override
    public void run(IMarker[] markers, IProgressMonitor monitor) {
        Map<IFile, List<Finding>> files = new LinkedHashMap<>();
        for (IMarker each : markers) {
            if (each.exists() && each.getResource() instanceof IFile file) {
                files.computeIfAbsent(file, key -> new ArrayList<>()).add(FindingMarkers.of(each));
            }
        }
        Mending.run(remedy, files, said -> { }, this::refused);
    }

    private void refused(String why) {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        if (window != null) {
            MessageDialog.openInformation(window.getShell(), getLabel(), why);
        }
    }
}
