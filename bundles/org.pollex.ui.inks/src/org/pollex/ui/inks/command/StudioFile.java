/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks.command;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;

/** The catalogue in a folder that the studio writes by the window: {@code studio.catalogue}, else one that has inks. */
final class StudioFile {

    private static final String ENDING = "catalogue";

    private StudioFile() {
    }

    /** The file, which need not be there. */
    static IFile in(IContainer folder, IProgressMonitor monitor) throws CoreException {
        folder.refreshLocal(IResource.DEPTH_ONE, monitor);
        IFile file = folder.getFile(IPath.fromOSString("studio." + ENDING));
        Optional<IFile> other = file.exists() ? Optional.empty() : Arrays.stream(folder.members())
                .filter(IFile.class::isInstance).map(IFile.class::cast).filter(StudioFile::holdsInks)
                .min(Comparator.comparing(IFile::getName));
        return other.orElse(file);
    }

    /** The file; where there is none, one without entries is made, which changes nothing for any design. */
    static IFile made(IContainer folder, IProgressMonitor monitor) throws CoreException, StoreException {
        IFile file = in(folder, monitor);
        if (!file.exists()) {
            Path path = file.getLocation().toPath();
            Catalogue empty = CatalogueFactory.eINSTANCE.createCatalogue();
            empty.setName(folder.getType() == IResource.PROJECT ? "The studio's own"
                    : "Of the job " + folder.getName());
            ModelFiles.CATALOGUES.create(empty, path);
            file.refreshLocal(IResource.DEPTH_ZERO, monitor);
        }
        return file;
    }

    /** Whether a file is a catalogue that has inks; a studio may keep other entries in files of their own. */
    private static boolean holdsInks(IFile file) {
        if (!ENDING.equals(file.getFileExtension()) || file.getName().startsWith(".")) {
            return false;
        }
        try {
            return !ModelFiles.CATALOGUES.load(file.getLocation().toPath()).getInks().isEmpty();
        } catch (StoreException e) {
            // what cannot be read is told wherever it is used
            return false;
        }
    }
}
