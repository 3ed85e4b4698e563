/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.markers;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.pollex.artwork.ArtException;
import org.pollex.model.design.Design;
import org.pollex.model.job.Job;
import org.pollex.model.store.JobFolder;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;
import org.pollex.print.PrintException;
import org.pollex.print.ShippedLettering;
import org.pollex.print.item.ItemException;
import org.pollex.rules.Finding;
import org.pollex.rules.Suite;
import org.pollex.rules.waiver.Waivers;

/**
 * What the checks say of a saved design.
 *
 * @param findings  worst first, those that the job waives marked so
 * @param trouble   why the design could not be checked, in one sentence; empty when it was
 */
public record DesignCheck(List<Finding> findings, Optional<String> trouble) {

    public DesignCheck {
        findings = List.copyOf(findings);
    }

    /**
     * Reads, prints and checks a design.
     *
     * @throws InterruptedException when the calling thread is told to stop
     */
    public static DesignCheck of(Path file, Suite suite) throws InterruptedException {
        try {
            Design design = ModelFiles.DESIGNS.load(file);
            Suite near = suite.near(file.toAbsolutePath().getParent());
            List<Finding> findings = near.check(near.printer(design, near.artBeside(file), new ShippedLettering())
                    .print(design));
            return new DesignCheck(waived(file, findings), Optional.empty());
        } catch (StoreException | PrintException | ItemException | ArtException e) {
            return new DesignCheck(List.of(), Optional.of(e.getMessage()));
        }
    }

    /** The findings of a design with those waived that the job in its folder waives. */
    public static List<Finding> waived(Path file, List<Finding> findings) throws StoreException {
        JobFolder folder = JobFolder.of(file);
        Optional<Path> path = folder.job();
        if (path.isEmpty()) {
            return findings;
        }
        Job job = ModelFiles.JOBS.load(path.get());
        String design = folder.path().toAbsolutePath().normalize().relativize(file.toAbsolutePath().normalize())
                .toString().replace('\\', '/');
        return Waivers.apply(findings, design, job.getWaivers());
    }
}
