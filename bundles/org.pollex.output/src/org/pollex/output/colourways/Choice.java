/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.colourways;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.pollex.rules.rank.Ranked;
import org.pollex.rules.rank.Verdict;

/** Which pairs of inks and material a client is shown. */
final class Choice {

    private Choice() {
    }

    /**
     * The design as it is, whatever it scores, then the best pair of each material that reads, then what else reads;
     * all in the order of the ranking. What does not read is not offered.
     *
     * @param ranking  best first
     * @param most     most pairs, 1 or more
     */
    static List<Ranked> of(List<Ranked> ranking, int most) {
        Set<Ranked> chosen = new LinkedHashSet<>();
        ranking.stream().filter(Ranked::own).findFirst().ifPresent(chosen::add);
        List<Ranked> reads = ranking.stream().filter(each -> each.verdict().compareTo(Verdict.READS) <= 0).toList();
        Set<String> materials = new LinkedHashSet<>();
        chosen.forEach(each -> materials.add(each.material().getId()));
        for (Ranked each : reads) {
            if (chosen.size() < most && materials.add(each.material().getId())) {
                chosen.add(each);
            }
        }
        for (Ranked each : reads) {
            if (chosen.size() < most) {
                chosen.add(each);
            }
        }
        List<Ranked> sorted = new ArrayList<>(ranking);
        sorted.retainAll(chosen);
        sorted.sort((a, b) -> Boolean.compare(b.own(), a.own()));
        return sorted;
    }
}
