/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.markers;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.io.WKTWriter;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;

/**
 * Findings on files. The only way to put them there replaces all markers of a file in one operation of the workspace,
 * so that nobody ever sees half of them; with no findings, the file is clean. Waived findings stand as information.
 */
public final class FindingMarkers {

    /** Type of the markers. */
    public static final String TYPE = "org.pollex.markers.finding";

    private static final String CHECK = "check";
    private static final String KIND = "kind";
    private static final String SIDE = "side";
    private static final String REGION = "region";
    private static final String MEASURED = "measured";
    private static final String LIMIT = "limit";
    private static final String UNIT = "unit";
    private static final String WHERE = "where";
    private static final String FIXES = "fixes";
    private static final String WAIVED = "waived";

    private FindingMarkers() {
    }

    /** Makes the markers of a file those of a check. */
    public static void replace(IFile file, DesignCheck check) throws CoreException {
        List<Map<String, Object>> all = new ArrayList<>();
        check.findings().forEach(each -> all.add(attributes(each)));
        check.trouble().ifPresent(each -> {
            Map<String, Object> values = new HashMap<>();
            values.put(IMarker.MESSAGE, each);
            values.put(IMarker.SEVERITY, IMarker.SEVERITY_ERROR);
            all.add(values);
        });
        IWorkspace workspace = file.getWorkspace();
        workspace.run(monitor -> {
            if (file.exists()) {
                file.deleteMarkers(TYPE, true, IResource.DEPTH_ZERO);
                for (Map<String, Object> values : all) {
                    file.createMarker(TYPE, values);
                }
            }
        }, workspace.getRuleFactory().markerRule(file), IWorkspace.AVOID_UPDATE, null);
    }

    private static Map<String, Object> attributes(Finding finding) {
        Map<String, Object> values = new HashMap<>();
        values.put(IMarker.MESSAGE, finding.waived() ? "Waived: " + finding.message() : finding.message());
        values.put(IMarker.SEVERITY, finding.waived() ? IMarker.SEVERITY_INFO : severity(finding.severity()));
        values.put(IMarker.LOCATION, location(finding));
        values.put(CHECK, finding.check());
        values.put(KIND, finding.kind());
        values.put(SIDE, finding.side());
        values.put(REGION, finding.region());
        finding.measured().ifPresent(each -> values.put(MEASURED, Double.toString(each)));
        finding.limit().ifPresent(each -> values.put(LIMIT, Double.toString(each)));
        values.put(UNIT, finding.unit());
        values.put(WHERE, new WKTWriter().write(finding.where()));
        values.put(FIXES, String.join(" ", finding.fixes()));
        values.put(WAIVED, finding.waived());
        values.put("severityName", finding.severity().name());
        return values;
    }

    private static int severity(Severity severity) {
        return switch (severity) {
            case ERROR -> IMarker.SEVERITY_ERROR;
            case WARNING -> IMarker.SEVERITY_WARNING;
            default -> IMarker.SEVERITY_INFO;
        };
    }

    private static String location(Finding finding) {
        if (finding.side().isEmpty() || finding.where().isEmpty()) {
            return finding.side();
        }
        org.locationtech.jts.geom.Coordinate middle = finding.where().getEnvelopeInternal().centre();
        return String.format(java.util.Locale.ROOT, "%s, x %.1f y %.1f mm", finding.side(), middle.x, middle.y);
    }

    /** The findings that the markers of a file stand for; one whose file could not be checked is left out. */
    public static List<Finding> of(IResource file) {
        try {
            List<Finding> findings = new ArrayList<>();
            for (IMarker marker : file.findMarkers(TYPE, true, IResource.DEPTH_ZERO)) {
                if (!marker.getAttribute(CHECK, "").isEmpty()) {
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
        String fixes = marker.getAttribute(FIXES, "");
        String message = marker.getAttribute(IMarker.MESSAGE, "");
        boolean waived = marker.getAttribute(WAIVED, false);
        return new Finding(marker.getAttribute(CHECK, ""), marker.getAttribute(KIND, ""),
                Severity.valueOf(marker.getAttribute("severityName", Severity.INFO.name())),
                marker.getAttribute(SIDE, ""), marker.getAttribute(REGION, ""), number(marker, MEASURED),
                number(marker, LIMIT), marker.getAttribute(UNIT, ""), where(marker),
                waived ? message.substring("Waived: ".length()) : message,
                fixes.isEmpty() ? List.of() : Arrays.asList(fixes.split(" ")), waived);
    }

    private static OptionalDouble number(IMarker marker, String key) {
        String text = marker.getAttribute(key, "");
        return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }

    private static Geometry where(IMarker marker) {
        try {
            return new WKTReader().read(marker.getAttribute(WHERE, "POINT EMPTY"));
        } catch (ParseException e) {
            return new GeometryFactory().createPoint();
        }
    }
}
