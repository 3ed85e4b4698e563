/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.List;
import org.pollex.print.ColourMatch;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Fixes;
import org.pollex.rules.Measures;
import org.pollex.rules.SideMeasures;

/** Does a side take more inks than the method prints? Full colour counts as the process inks it is mixed from. */
public final class TooManyInks implements Check {

    @Override
    public void check(CheckContext context, FindingSink sink) {
        int most = context.printed().method().getInksMax();
        int process = (int) context.setting("too-many-inks.process-inks");
        for (SideMeasures side : context.sides()) {
            List<String> inks = side.inks();
            int count = inks.size() + (inks.contains(ColourMatch.PROCESS) ? process - 1 : 0);
            if (count > most) {
                List<String> names = inks.stream().map(ink -> Subjects.ink(context.printed(), ink)).toList();
                sink.error("").on(side.name()).measured(count, most, "inks").at(side.printed())
                        .curedBy(Fixes.MOVE_TO_OTHER_SIDE)
                        .say("The " + side.name() + " takes " + Measures.count(count, "ink", "inks") + " ("
                                + String.join(", ", names) + "), but this method prints " + most
                                + "; assign colours to fewer inks or choose another method.");
            }
        }
    }
}
