/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.pollex.markers.FindingMarkers;
import org.pollex.markers.StudioProject;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;

/** The findings on saved designs of one or all jobs, in the order in which they are gone through. */
final class Queue {

    private final List<Entry> entries;

    private Queue(List<Entry> entries) {
        this.entries = List.copyOf(entries);
    }

    static Queue empty() {
        return new Queue(List.of());
    }

    /** Folders with designs, by path. */
    static List<IContainer> folders() {
        TreeMap<String, IContainer> folders = new TreeMap<>();
        designs().forEach(each -> folders.put(each.getParent().getFullPath().toString(), each.getParent()));
        return List.copyOf(folders.values());
    }

    private static List<IFile> designs() {
        try {
            return StudioProject.existing().isEmpty() ? List.of()
                    : StudioProject.designs(StudioProject.existing().get().project());
        } catch (CoreException e) {
            ILog.of(Queue.class).warn("The designs of the jobs cannot be listed", e);
            return List.of();
        }
    }

    /**
     * Findings of errors and warnings, since notes need no decision, and designs that have none.
     *
     * @param folder     of one job; null for all
     * @param unsettled  only what is not waived
     */
    static Queue of(IContainer folder, boolean unsettled) {
        List<Entry> found = new ArrayList<>();
        for (IMarker marker : markers()) {
            if (marker.getResource() instanceof IFile file && (folder == null || folder.equals(file.getParent()))
                    && !marker.getAttribute("check", "").isEmpty()) {
                Finding finding = FindingMarkers.of(marker);
                if (finding.severity() != Severity.INFO && !(unsettled && finding.waived())) {
                    found.add(new Entry(file, finding));
                }
            }
        }
        if (!unsettled) {
            List<IFile> marked = found.stream().map(Entry::file).toList();
            designs().stream().filter(each -> folder == null || folder.equals(each.getParent()))
                    .filter(each -> !marked.contains(each)).forEach(each -> found.add(Entry.clean(each)));
        }
        found.sort(Comparator.comparing((Entry each) -> each.file().getFullPath().toString())
                .thenComparing(each -> each.finding().severity()).thenComparing(each -> each.finding().side())
                .thenComparing(each -> each.finding().check()));
        return new Queue(found);
    }

    private static List<IMarker> markers() {
        try {
            return StudioProject.existing().isEmpty() ? List.of() : List.of(StudioProject.existing().get().project()
                    .findMarkers(FindingMarkers.TYPE, true, IResource.DEPTH_INFINITE));
        } catch (CoreException e) {
            ILog.of(Queue.class).warn("The findings of the jobs cannot be read", e);
            return List.of();
        }
    }

    int size() {
        return entries.size();
    }

    Entry get(int index) {
        return entries.get(index);
    }

    long settled() {
        return entries.stream().filter(each -> each.finding().waived()).count();
    }

    long decisions() {
        return entries.stream().filter(Entry::open).count();
    }

    /** The place of the same finding in this queue, or of what came after it. */
    int near(Entry before, int index) {
        for (int i = 0; before != null && i < entries.size(); i++) {
            Entry each = entries.get(i);
            if (each.file().equals(before.file()) && each.finding().message().equals(before.finding().message())
                    && each.finding().side().equals(before.finding().side())) {
                return i;
            }
        }
        return Math.max(0, Math.min(index, entries.size() - 1));
    }
}
