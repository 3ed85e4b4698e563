/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.markers;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.eclipse.core.resources.IMarker;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.io.WKTWriter;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;
import org.pollex.rules.waiver.Waivers;

/**
 * A finding as the attributes of a marker, and back. Lengths stay in mm. A place whose outline is too long for a marker
 * is kept as its box, which is also what its fingerprint is made of.
 */
public final class FindingValues {

    /** Id of the check. */
    public static final String CHECK = "check";
    /** Name of the check, for people. */
    public static final String CHECK_NAME = "checkName";
    /** Name of the side; empty when the finding concerns the whole design. */
    public static final String SIDE = "side";
    /** Measured value, a number as text; missing when there is none. */
    public static final String MEASURED = "measured";
    /** Limit it was held against, a number as text; missing when there is none. */
    public static final String LIMIT = "limit";
    /** Unit of both. */
    public static final String UNIT = "unit";
    /** What the place is known by after small changes, as waivers keep it. */
    public static final String FINGERPRINT = "fingerprint";

    private static final String KIND = "kind";
    private static final String REGION = "region";
    private static final String WHERE = "where";
    private static final String FIXES = "fixes";
    private static final String WAIVED = "waived";
    private static final String SEVERITY = "severityName";
    private static final String WAIVED_BEFORE = "Waived: ";

    /** Bytes of text that an attribute of a marker may have. */
    private static final int LONGEST = 65_535;

    private FindingValues() {
    }

    /**
     * The attributes of a finding.
     *
     * @param checkName  name of its check, for people
     */
    public static Map<String, Object> of(Finding finding, String checkName) {
        Map<String, Object> values = new HashMap<>();
        values.put(IMarker.MESSAGE, finding.waived() ? WAIVED_BEFORE + finding.message() : finding.message());
        values.put(IMarker.SEVERITY, finding.waived() ? IMarker.SEVERITY_INFO : severity(finding.severity()));
        values.put(IMarker.LOCATION, location(finding));
        values.put(CHECK, finding.check());
        values.put(CHECK_NAME, checkName);
        values.put(KIND, finding.kind());
        values.put(SIDE, finding.side());
        values.put(REGION, finding.region());
        finding.measured().ifPresent(each -> values.put(MEASURED, Double.toString(each)));
        finding.limit().ifPresent(each -> values.put(LIMIT, Double.toString(each)));
        values.put(UNIT, finding.unit());
        values.put(WHERE, text(finding.where()));
        values.put(FINGERPRINT, Waivers.fingerprint(finding));
        values.put(FIXES, String.join(" ", finding.fixes()));
        values.put(WAIVED, finding.waived());
        values.put(SEVERITY, finding.severity().name());
        return values;
    }

    private static String text(Geometry where) {
        String text = new WKTWriter().write(where);
        return text.getBytes(StandardCharsets.UTF_8).length <= LONGEST ? text
                : new WKTWriter().write(where.getEnvelope());
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
        Coordinate middle = finding.where().getEnvelopeInternal().centre();
        return String.format(Locale.ROOT, "%s, x %.1f y %.1f mm", finding.side(), tenth(middle.x),
                tenth(middle.y));
    }

    /** To a tenth, without a sign before zero. */
    private static double tenth(double mm) {
        return Math.round(mm * 10) / 10.0 + 0.0;
    }

    /** The finding that such attributes stand for; what is missing is taken as empty. */
    public static Finding finding(Map<String, Object> values) {
        String fixes = text(values, FIXES);
        String message = text(values, IMarker.MESSAGE);
        boolean waived = Boolean.TRUE.equals(values.get(WAIVED));
        String severity = text(values, SEVERITY);
        return new Finding(text(values, CHECK), text(values, KIND),
                severity.isEmpty() ? Severity.INFO : Severity.valueOf(severity), text(values, SIDE),
                text(values, REGION), number(values, MEASURED), number(values, LIMIT), text(values, UNIT),
                where(text(values, WHERE)), waived && message.startsWith(WAIVED_BEFORE)
                        ? message.substring(WAIVED_BEFORE.length()) : message,
                fixes.isEmpty() ? List.of() : Arrays.asList(fixes.split(" ")), waived);
    }

    private static String text(Map<String, Object> values, String key) {
        return values.get(key) instanceof String text ? text : "";
    }

    private static OptionalDouble number(Map<String, Object> values, String key) {
        String text = text(values, key);
        return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }

    private static Geometry where(String text) {
        try {
            return new WKTReader().read(text.isEmpty() ? "POINT EMPTY" : text);
        } catch (ParseException e) {
            return new GeometryFactory().createPoint();
        }
    }
}
