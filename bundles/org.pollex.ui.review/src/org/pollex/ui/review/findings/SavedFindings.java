/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.findings;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.pollex.markers.FindingMarkers;
import org.pollex.markers.StudioProject;
import org.pollex.markers.StudioSuite;
import org.pollex.rules.Finding;

/**
 * Follows which designs and folders are selected in the page, and what their saved markers say. Reads in the
 * background.
 */
final class SavedFindings {

    /** Markers of many designs come one by one; they are read once after them, milliseconds. */
    private static final int QUIET = 150;

    /**
     * What is known of the selected designs.
     *
     * @param designs   how many there are
     * @param findings  on them, designs in the order of their paths, the worst of each first
     */
    record Saved(int designs, List<Found> findings) {

        /** Nothing is selected. */
        static final Saved NONE = new Saved(0, List.of());
    }

    private final IWorkbenchPage page;
    private final Display display;
    private final Consumer<Saved> told;
    private final ISelectionListener selections = this::selected;
    private final IResourceChangeListener markers = this::markersChanged;
    private final Job reader = Job.createSystem("Reading findings", (ICoreRunnable) monitor -> read());
    private volatile List<IResource> chosen = List.of();

    /** @param told  takes what is known of a new selection, and what changes of it, in the window's thread */
    SavedFindings(IWorkbenchPage page, Consumer<Saved> told) {
        this.page = page;
        this.display = page.getWorkbenchWindow().getShell().getDisplay();
        this.told = told;
        page.addPostSelectionListener(selections);
        ResourcesPlugin.getWorkspace().addResourceChangeListener(markers, IResourceChangeEvent.POST_CHANGE);
        selected(null, page.getSelection());
    }

    private void selected(IWorkbenchPart part, ISelection selection) {
        if (!(selection instanceof IStructuredSelection lines) || lines.isEmpty()) {
            return;
        }
        List<IResource> found = new ArrayList<>();
        for (Object each : lines.toList()) {
            IResource resource = Adapters.adapt(each, IResource.class);
            if (resource instanceof IContainer || resource instanceof IFile file
                    && "design".equals(file.getFileExtension())) {
                found.add(resource);
            }
        }
        if (!found.isEmpty() && !found.equals(chosen)) {
            chosen = found;
            reader.schedule();
        }
    }

    private void markersChanged(IResourceChangeEvent event) {
        if (!chosen.isEmpty() && event.findMarkerDeltas(FindingMarkers.TYPE, true).length > 0) {
            reader.schedule(QUIET);
        }
    }

    private void read() {
        List<IResource> resources = chosen;
        Set<IFile> designs = new LinkedHashSet<>();
        try {
            for (IResource each : resources) {
                if (each instanceof IContainer folder) {
                    designs.addAll(StudioProject.designs(folder));
                } else if (each.exists()) {
                    designs.add((IFile) each);
                }
            }
        } catch (CoreException e) {
            ILog.of(SavedFindings.class).warn("The designs that are selected cannot be listed", e);
        }
        List<Found> findings = new ArrayList<>();
        for (IFile file : designs) {
            Path path = file.getLocation() == null ? null : file.getLocation().toPath();
            if (path != null) {
                FindingMarkers.of(file).stream().sorted(Comparator.comparing(Finding::severity)
                        .thenComparing(Finding::side)).forEach(each -> findings.add(new Found(path, each)));
            }
        }
        // the view asks it for names of checks, and the first to ask reads all catalogues
        StudioSuite.get();
        Saved saved = new Saved(designs.size(), List.copyOf(findings));
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                if (resources.equals(chosen)) {
                    told.accept(saved);
                }
            });
        }
    }

    void dispose() {
        page.removePostSelectionListener(selections);
        ResourcesPlugin.getWorkspace().removeResourceChangeListener(markers);
        reader.cancel();
    }
}
