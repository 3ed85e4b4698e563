/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pollex.markers.StudioSuite;
import org.pollex.model.catalogue.Entry;
import org.pollex.model.design.Design;
import org.pollex.model.job.Job;
import org.pollex.model.store.Catalogues;
import org.pollex.model.store.EntryNames;
import org.pollex.model.store.JobFolder;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;

/**
 * Whose design it is, and what it is printed on and how, as it is saved.
 *
 * @param job    client and job; empty without a job
 * @param print  product, material, method and inks, by their names; an entry that no catalogue has by its id
 */
record DesignFacts(String job, String print) {

    /** Reads the facts; not for the window's thread. */
    static DesignFacts of(Path file) throws StoreException {
        Design design = ModelFiles.DESIGNS.load(file);
        Catalogues catalogues = StudioSuite.get().near(file.toAbsolutePath().getParent()).catalogues();
        Optional<Path> path = JobFolder.of(file).job();
        String job = "";
        if (path.isPresent()) {
            Job read = ModelFiles.JOBS.load(path.get());
            job = joined(", ", read.getClient(), read.getName());
        }
        String inks = design.getInks().stream().map(each -> name(each, catalogues::ink))
                .collect(Collectors.joining(" + "));
        String print = joined(", ", name(design.getProduct(), catalogues::product),
                name(design.getMaterial(), catalogues::material), name(design.getMethod(), catalogues::method), inks);
        return new DesignFacts(job, print.isEmpty() ? print : Character.toUpperCase(print.charAt(0))
                + print.substring(1));
    }

    private static String name(String id, Function<String, ? extends Optional<? extends Entry>> entries) {
        return id == null ? "" : entries.apply(id).map(each -> EntryNames.of(each)).orElse(id);
    }

    private static String joined(String between, String... parts) {
        List<String> said = Stream.of(parts).filter(each -> each != null && !each.isBlank()).toList();
        return String.join(between, said);
    }
}
