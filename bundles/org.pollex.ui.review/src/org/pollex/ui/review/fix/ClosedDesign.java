/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.fix;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.pollex.artwork.ArtException;
import org.pollex.fixes.Remedies;
import org.pollex.fixes.Remedy;
import org.pollex.markers.StudioSuite;
import org.pollex.model.design.Design;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.model.store.StoreException;
import org.pollex.print.PrintException;
import org.pollex.print.Printed;
import org.pollex.print.ShippedLettering;
import org.pollex.print.item.ItemException;
import org.pollex.rules.Finding;
import org.pollex.rules.Suite;
import org.pollex.rules.review.JobReview;

/** Mends a design that no editor has open, and saves it. */
final class ClosedDesign {

    private ClosedDesign() {
    }

    /** Mends and saves; why not, when it cannot be done. */
    static Optional<String> mend(IFile file, String remedy, List<Finding> findings) {
        Path path = file.getLocation().toPath();
        try {
            Optional<JobReview> review = JobReview.of(path, java.time.Clock.systemUTC());
            if (review.isPresent() && review.get().locked(path).isPresent()) {
                return review.get().locked(path);
            }
            Opened<Design> opened = ModelFiles.DESIGNS.open(path);
            Suite suite = StudioSuite.get().near(path.getParent());
            Printed printed = suite.printer(opened.model(), suite.artBeside(path), new ShippedLettering())
                    .print(opened.model());
            Remedy answer = new Remedies(suite, opened.model(), printed).applyAll(remedy, findings);
            if (answer instanceof Remedy.Refused refused) {
                return Optional.of(refused.why());
            }
            ((Remedy.Done) answer).command().execute();
            ModelFiles.DESIGNS.save(opened);
            file.refreshLocal(IResource.DEPTH_ZERO, null);
            return Optional.empty();
        } catch (StoreException | PrintException | ItemException | ArtException | CoreException e) {
            return Optional.of(e.getMessage());
        }
    }
}
