/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pollex.print.item.ItemFace;

/** Runs every check on a design, contributor by contributor, each apart from the caller. */
final class CheckRunner {

    private final List<Lane> lanes;
    private final long millis;

    CheckRunner(List<CheckEntry> checks, long millis) {
        this.millis = millis;
        Map<String, List<CheckEntry>> contributors = new LinkedHashMap<>();
        checks.forEach(check -> contributors.computeIfAbsent(check.contributor(), key -> new ArrayList<>()).add(check));
        lanes = contributors.entrySet().stream().map(entry -> new Lane(entry.getKey(), entry.getValue())).toList();
    }

    List<Finding> run(CheckContext context) throws InterruptedException {
        List<Finding> found = new ArrayList<>();
        for (Lane lane : lanes) {
            found.addAll(lane.run(context, millis));
        }
        found.sort(FindingOrder.byFaces(context.printed().item().faces().stream().map(ItemFace::name).toList()));
        return List.copyOf(found);
    }
}
