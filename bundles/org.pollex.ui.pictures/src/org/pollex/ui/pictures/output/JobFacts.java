/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures.output;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.pollex.editor.session.Known;
import org.pollex.model.design.Placement;
import org.pollex.model.job.Job;
import org.pollex.model.store.JobFolder;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;
import org.pollex.output.proof.ProofFacts;

/** What a proof says about the job that a design belongs to. */
final class JobFacts {

    private JobFacts() {
    }

    static ProofFacts of(Path design, Known known, LocalDate date) throws StoreException {
        Set<String> art = new LinkedHashSet<>();
        known.printed().design().getSides().forEach(side -> side.getLayers().forEach(layer -> layer.getMarks()
                .forEach(mark -> {
                    if (mark instanceof Placement placement && placement.getArt() != null) {
                        art.add(Path.of(placement.getArt()).getFileName().toString());
                    }
                })));
        Optional<Path> file = JobFolder.of(design).job();
        if (file.isEmpty()) {
            return ProofFacts.of(date, List.copyOf(art));
        }
        Job job = ModelFiles.JOBS.load(file.get());
        OptionalInt revision = job.getRevisions().stream().mapToInt(each -> each.getNumber()).max();
        OptionalInt quantity = job.getQuantity() > 0 ? OptionalInt.of(job.getQuantity()) : OptionalInt.empty();
        return new ProofFacts(text(job.getClient()), text(job.getName()), revision, date, quantity, List.copyOf(art));
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }
}
