/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.List;
import org.pollex.geometry.shape.Polygons;

/**
 * A check and its state of health. Made when it is first needed; one that cannot be made stays out of use, one that
 * throws on a design does so for that design alone, one that hangs is out of use until its thread comes back.
 */
final class LaneCheck {

    private final CheckEntry entry;
    private volatile Check check;
    private volatile String unusable = "";
    private volatile Pass hanging;

    LaneCheck(CheckEntry entry) {
        this.entry = entry;
    }

    List<Finding> run(CheckContext context) {
        Pass stuck = hanging;
        if (stuck != null && !stuck.ended()) {
            return List.of(failed("an earlier call has not come back"));
        }
        if (!unusable.isEmpty()) {
            return List.of(failed(unusable));
        }
        try {
            Results results = new Results(entry.id());
            made().check(context, results);
            return results.findings();
        } catch (Throwable e) {
            return List.of(failed(reason(e)));
        }
    }

    private synchronized Check made() {
        if (check == null) {
            try {
                check = entry.check().get();
            } catch (Throwable e) {
                unusable = reason(e);
                throw e;
            }
            if (check == null) {
                unusable = "it could not be made";
                throw new IllegalStateException(unusable);
            }
        }
        return check;
    }

    /** Puts the check out of use until the pass has ended. */
    Finding hangs(Pass pass, long millis) {
        hanging = pass;
        return failed("it gave no answer within " + millis + " ms");
    }

    private static String reason(Throwable e) {
        if (e instanceof MissingSettingException || e instanceof Results.NonsenseException
                || e instanceof IllegalStateException && e.getMessage() != null) {
            return e.getMessage();
        }
        String message = e.getMessage();
        return e.getClass().getSimpleName() + (message == null ? "" : " (" + message.lines().findFirst().orElse("")
                + ")");
    }

    private Finding failed(String reason) {
        return new Finding(entry.id(), "not-run", Severity.WARNING, "", "", java.util.OptionalDouble.empty(),
                java.util.OptionalDouble.empty(), "", Polygons.empty(), "The check \"" + entry.name() + "\" of "
                        + entry.contributor() + " could not be run: " + reason
                        + ". What it looks for is not known for this design.", List.of(), false);
    }
}
