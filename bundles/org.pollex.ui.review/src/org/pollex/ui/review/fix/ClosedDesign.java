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
import org.pollex.print.item.ItemException;
import org.pollex.rules.Finding;
import org.pollex.rules.Suite;
import org.pollex.rules.review.JobReview;
import org.pollex.ui.review.SavedPrint;

/** Mends a design that no editor has open, and saves it. */
final class ClosedDesign {

    private ClosedDesign() {
    }

    /** Mends and saves; refused when it cannot be done. */
    static Remedy mend(IFile file, String remedy, List<Finding> findings) {
        Path path = file.getLocation().toPath();
        try {
            Optional<JobReview> review = JobReview.of(path, java.time.Clock.systemUTC());
            if (review.isPresent() && review.get().locked(path).isPresent()) {
                return new Remedy.Refused(review.get().locked(path).get());
            }
            Opened<Design> opened = ModelFiles.DESIGNS.open(path);
            Suite suite = StudioSuite.get().near(path.getParent());
            Printed printed = SavedPrint.of(path, opened.model());
            Remedy answer = new Remedies(suite, opened.model(), printed).applyAll(remedy, findings);
            if (answer instanceof Remedy.Done done) {
                done.command().execute();
                ModelFiles.DESIGNS.save(opened);
                file.refreshLocal(IResource.DEPTH_ZERO, null);
            }
            return answer;
        } catch (StoreException | PrintException | ItemException | ArtException | CoreException e) {
            return new Remedy.Refused(e.getMessage());
        }
    }
}
