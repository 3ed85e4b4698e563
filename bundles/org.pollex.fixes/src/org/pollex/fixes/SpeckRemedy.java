/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.fixes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.commands.Command;
import org.pollex.edit.LeaveOutCommand;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.print.Printed;
import org.pollex.rules.Finding;

/** Leaves dots out of the print that the method cannot hold. The client's file is not touched. */
final class SpeckRemedy {

    private final Printed printed;
    private final UnaryOperator<EObject> original;

    SpeckRemedy(Printed printed, UnaryOperator<EObject> original) {
        this.printed = printed;
        this.original = original;
    }

    Remedy leaveOut(Finding finding, List<Mark> marks) {
        double limit = finding.limit().orElse(printed.method().getSpeckMin());
        List<Command> all = new ArrayList<>();
        for (Mark mark : marks) {
            if (mark instanceof Placement placement && placement.getLeaveOut() < limit) {
                all.add(new LeaveOutCommand((Placement) original.apply(placement), limit));
            }
        }
        return all.isEmpty() ? new Remedy.Refused("The speck is no part of placed art; delete it by hand.")
                : new Remedy.Done(Remedies.of("Leave specks out", all), String.format(java.util.Locale.ROOT,
                        "Parts of the art smaller than a dot of %.2f mm are left out.", limit));
    }
}
