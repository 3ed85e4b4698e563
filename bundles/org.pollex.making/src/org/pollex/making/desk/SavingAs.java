/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.NewFolders;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.SafeOutput;
import org.pollex.model.design.Design;
import org.pollex.model.design.Placement;
import org.pollex.model.store.ArtFile;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;

/**
 * Writes a design to a file with its art beside it. When a step fails, copies and folders that it made are taken away
 * again.
 */
public final class SavingAs {

    private final Design design;
    private final Path to;
    private final List<Path> copied = new ArrayList<>();
    private final NewFolders folders = new NewFolders();

    /** A design that goes to a file; a relative path of its art is one to a file beside {@code to}. */
    public SavingAs(Design design, Path to) {
        this.design = design;
        this.to = to.toAbsolutePath().normalize();
    }

    /**
     * Copies the art and writes the design over whatever the file holds, whose last state is kept beside it.
     *
     * @param art  finds the file of each placement; one without is left as it is
     */
    public void save(Finder art, boolean replace) throws Refusal {
        boolean done = false;
        try {
            folders.make(to.getParent());
            List<Placement> placements = Placements.of(design);
            if (!placements.isEmpty()) {
                folders.make(to.resolveSibling(ArtFiles.FOLDER));
            }
            for (Placement placement : placements) {
                Optional<Path> file = art.find(placement);
                if (file.isPresent()) {
                    adopt(placement, file.get());
                }
            }
            if (replace) {
                ModelFiles.DESIGNS.replace(design, to);
            } else {
                ModelFiles.DESIGNS.create(design, to);
            }
            done = true;
        } catch (StoreException e) {
            throw new Refusal(Desk.code(e), e.getMessage(), e);
        } catch (IOException e) {
            throw new Refusal(ExitCode.NOT_WRITTEN, to + ": cannot be written (" + SafeOutput.reason(e)
                    + "); check the folder and its permissions.", e);
        } finally {
            if (!done) {
                copied.forEach(SafeOutput::remove);
                folders.undo();
            }
        }
    }

    private void adopt(Placement placement, Path file) throws IOException, StoreException {
        Set<Path> before = present();
        ArtFile art = ArtFiles.adopt(to, file);
        Path copy = to.resolveSibling(art.path());
        if (!before.contains(copy.getFileName())) {
            copied.add(copy);
        }
        placement.setArt(art.path());
        placement.setSha256(art.sha256());
    }

    private Set<Path> present() throws IOException {
        Path folder = to.resolveSibling(ArtFiles.FOLDER);
        if (!Files.isDirectory(folder)) {
            return new HashSet<>();
        }
        try (Stream<Path> names = Files.list(folder)) {
            return names.map(Path::getFileName).collect(Collectors.toSet());
        }
    }

    /** Finds the file of a placement. */
    @FunctionalInterface
    public interface Finder {

        /** The file, or nothing when there is none to bring along. */
        Optional<Path> find(Placement placement) throws StoreException;
    }
}
