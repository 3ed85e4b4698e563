/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.markers;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.pollex.rules.CheckEntry;
import org.pollex.rules.Finding;
import org.pollex.rules.Suite;

/**
 * Findings on files. The only way to put them there replaces all markers of a file in one operation of the workspace,
 * so that nobody ever sees half of them; with no findings, the file is clean. Waived findings stand as information.
 * What a stopped check did not reach keeps its findings and says that it was not checked.
 */
public final class FindingMarkers {

    /** Type of the markers. */
    public static final String TYPE = "org.pollex.markers.finding";

    private static final String UNCHECKED = "unchecked";

    private FindingMarkers() {
    }

    /** Makes the markers of a file those of a check; the suite knows the names of checks. */
    public static void replace(IFile file, DesignCheck check, Suite suite) throws CoreException {
        List<Map<String, Object>> all = new ArrayList<>();
        check.findings().forEach(each -> all.add(FindingValues.of(each, name(suite, each.check()))));
        check.trouble().ifPresent(each -> all.add(said(each, IMarker.SEVERITY_ERROR)));
        change(file, () -> {
            file.deleteMarkers(TYPE, true, IResource.DEPTH_ZERO);
            for (Map<String, Object> values : all) {
                file.createMarker(TYPE, values);
            }
        });
    }

    /** Says of a file that it was not checked since it changed; what is known of it from before stays. */
    static void unchecked(IFile file) throws CoreException {
        if (!isUnchecked(file)) {
            Map<String, Object> values = said("Not checked since it or its art, job or catalogue changed; it is "
                    + "checked with the next change, or when the workbench starts.", IMarker.SEVERITY_INFO);
            values.put(UNCHECKED, true);
            change(file, () -> file.createMarker(TYPE, values));
        }
    }

    /** Whether a file waits to be checked because a check was stopped. */
    public static boolean isUnchecked(IFile file) throws CoreException {
        return file.exists() && unchecked(file, IResource.DEPTH_ZERO).contains(file);
    }

    /** The files in and below a resource that wait to be checked because a check was stopped. */
    static List<IFile> uncheckedBelow(IResource resource) throws CoreException {
        return unchecked(resource, IResource.DEPTH_INFINITE);
    }

    private static List<IFile> unchecked(IResource resource, int depth) throws CoreException {
        List<IFile> files = new ArrayList<>();
        for (IMarker marker : resource.findMarkers(TYPE, false, depth)) {
            if (marker.getAttribute(UNCHECKED, false) && marker.getResource() instanceof IFile file) {
                files.add(file);
            }
        }
        return files;
    }

    private interface Change {
        void make() throws CoreException;
    }

    private static void change(IFile file, Change change) throws CoreException {
        IWorkspace workspace = file.getWorkspace();
        workspace.run(monitor -> {
            if (file.exists()) {
                change.make();
            }
        }, workspace.getRuleFactory().markerRule(file), IWorkspace.AVOID_UPDATE, null);
    }

    private static Map<String, Object> said(String message, int severity) {
        Map<String, Object> values = new HashMap<>();
        values.put(IMarker.MESSAGE, message);
        values.put(IMarker.SEVERITY, severity);
        return values;
    }

    private static String name(Suite suite, String check) {
        return suite.checks().stream().filter(each -> each.id().equals(check)).map(CheckEntry::name).findFirst()
                .orElse(check);
    }

    /** The findings that the markers of a file stand for; one whose file could not be checked is left out. */
    public static List<Finding> of(IResource file) {
        try {
            List<Finding> findings = new ArrayList<>();
            for (IMarker marker : file.findMarkers(TYPE, true, IResource.DEPTH_ZERO)) {
                if (!marker.getAttribute(FindingValues.CHECK, "").isEmpty()) {
                    findings.add(of(marker));
                }
            }
            return findings;
        } catch (CoreException e) {
            ILog.of(FindingMarkers.class).warn("The findings on " + file.getName() + " cannot be read", e);
            return List.of();
        }
    }

    /** The finding that a marker stands for. */
    public static Finding of(IMarker marker) {
        try {
            Map<String, Object> values = marker.getAttributes();
            return FindingValues.finding(values == null ? Map.of() : values);
        } catch (CoreException e) {
            // it was taken off meanwhile
            return FindingValues.finding(Map.of());
        }
    }
}
