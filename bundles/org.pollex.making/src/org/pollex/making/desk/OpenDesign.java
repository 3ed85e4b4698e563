/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.desk;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.pollex.model.design.Design;
import org.pollex.model.design.Placement;
import org.pollex.model.job.Job;
import org.pollex.model.job.JobDesign;
import org.pollex.model.store.Opened;
import org.pollex.output.proof.ProofFacts;
import org.pollex.print.Printed;

/**
 * A design with everything the words ask about it.
 *
 * @param opened   the design and its file
 * @param printed  what it prints
 * @param job      the job that it belongs to
 */
public record OpenDesign(Opened<Design> opened, Printed printed, Optional<FoundJob> job) {

    /** The design. */
    public Design design() {
        return opened.model();
    }

    /** What a proof of that day says about the job. */
    public ProofFacts facts(LocalDate date) {
        Set<String> art = new LinkedHashSet<>();
        design().getSides().forEach(side -> side.getLayers().forEach(layer -> layer.getMarks().forEach(mark -> {
            if (mark instanceof Placement placement && placement.getArt() != null) {
                art.add(Path.of(placement.getArt()).getFileName().toString());
            }
        })));
        if (job.isEmpty()) {
            return ProofFacts.of(date, new ArrayList<>(art));
        }
        Job of = job.get().job();
        OptionalInt revision = of.getRevisions().stream().mapToInt(each -> each.getNumber()).max();
        return new ProofFacts(text(of.getClient()), text(of.getName()), revision, date, quantity(of),
                new ArrayList<>(art));
    }

    private OptionalInt quantity(Job of) {
        String name = job.map(FoundJob::design).orElse("");
        for (JobDesign each : of.getDesigns()) {
            if (name.equals(each.getPath()) && each.getQuantity() > 0) {
                return OptionalInt.of(each.getQuantity());
            }
        }
        return of.getQuantity() > 0 ? OptionalInt.of(of.getQuantity()) : OptionalInt.empty();
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }
}
