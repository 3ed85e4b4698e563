/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.findings;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;

/**
 * Which findings are listed. What is taken off the list by severity, check, side or waiver is remembered for the next
 * start; the text that is searched for is not.
 */
final class FindingFilter {

    private static final String NODE = "org.pollex.ui.review";
    private static final String SEVERITIES = "findings.hidden.severities";
    private static final String CHECKS = "findings.hidden.checks";
    private static final String SIDES = "findings.hidden.sides";
    private static final String WAIVED = "findings.hidden.waived";
    /** Stands for findings on the whole design, whose side has no name. */
    private static final String WHOLE = "*";

    private final Set<String> severities = kept(SEVERITIES);
    private final Set<String> checks = kept(CHECKS);
    private final Set<String> sides = kept(SIDES);
    private boolean waived = InstanceScope.INSTANCE.getNode(NODE).getBoolean(WAIVED, false);
    private String text = "";

    private static Set<String> kept(String key) {
        return Arrays.stream(InstanceScope.INSTANCE.getNode(NODE).get(key, "").split(" "))
                .filter(each -> !each.isEmpty()).collect(Collectors.toCollection(TreeSet::new));
    }

    boolean shows(Severity severity) {
        return !severities.contains(severity.name());
    }

    boolean showsCheck(String check) {
        return !checks.contains(check);
    }

    boolean showsSide(String side) {
        return !sides.contains(side.isEmpty() ? WHOLE : side);
    }

    boolean showsWaived() {
        return !waived;
    }

    void show(Severity severity, boolean on) {
        change(severities, severity.name(), on);
    }

    void showCheck(String check, boolean on) {
        change(checks, check, on);
    }

    void showSide(String side, boolean on) {
        change(sides, side.isEmpty() ? WHOLE : side, on);
    }

    void showWaived(boolean on) {
        waived = !on;
        keep();
    }

    /** Lists all again. */
    void showAll() {
        severities.clear();
        checks.clear();
        sides.clear();
        waived = false;
        text = "";
        keep();
    }

    /** Lists only what holds this text, whatever its case. */
    void search(String words) {
        text = words.strip().toLowerCase(Locale.ROOT);
    }

    /** Whether a finding is listed. */
    boolean shows(Finding finding) {
        return shows(finding.severity()) && showsCheck(finding.check()) && showsSide(finding.side())
                && (showsWaived() || !finding.waived())
                && (finding.message() + " " + finding.check()).toLowerCase(Locale.ROOT).contains(text);
    }

    private void change(Set<String> hidden, String key, boolean on) {
        if (on) {
            hidden.remove(key);
        } else {
            hidden.add(key);
        }
        keep();
    }

    private void keep() {
        var node = InstanceScope.INSTANCE.getNode(NODE);
        node.put(SEVERITIES, String.join(" ", severities));
        node.put(CHECKS, String.join(" ", checks));
        node.put(SIDES, String.join(" ", sides));
        node.putBoolean(WAIVED, waived);
        try {
            node.flush();
        } catch (BackingStoreException e) {
            ILog.of(FindingFilter.class).warn("The filter of findings could not be kept", e);
        }
    }
}
