/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.action;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.locationtech.jts.geom.Geometry;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;
import org.pollex.edit.ReplaceArtCommand;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.store.ArtFile;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.StoreException;

/**
 * Brings files of art into a design: each is copied unchanged beside it and placed, as large as the safe zone allows at
 * its place. Files are read in the background; files that cannot be used are told in one message, the others placed.
 */
public final class ArtIn {

    /** How far one file of several lies from the one before, mm. */
    private static final double APART = 1;

    private record Read(ArtFile file, String name, double width, double height) {
    }

    private final Workplace at;

    /** @param at where to place */
    public ArtIn(Workplace at) {
        this.at = at;
    }

    /** Places files on the side shown, the first at a place in mm on the item, the others a little further each. */
    public void place(List<Path> files, double x, double y) {
        String face = at.pages().face();
        Optional<Geometry> safe = at.face().map(each -> each.safe());
        inBackground("Placing art", files, read -> {
            List<Mark> marks = new ArrayList<>();
            for (int i = 0; i < read.size(); i++) {
                Read each = read.get(i);
                double wishedX = x + i * APART;
                double wishedY = y + i * APART;
                Room.Spot spot = safe.map(area -> Room.spot(area, wishedX, wishedY, each.width(), each.height()))
                        .orElse(new Room.Spot(wishedX, wishedY, 1));
                Placement mark = DesignFactory.eINSTANCE.createPlacement();
                mark.setName(each.name());
                mark.setArt(each.file().path());
                mark.setSha256(each.file().sha256());
                mark.setX(spot.x());
                mark.setY(spot.y());
                mark.setScale(spot.scale());
                marks.add(mark);
            }
            at.session().run(Changes.add(at.session().design(), face, marks, "Place art"));
            at.pages().select(marks);
        });
    }

    /** Gives a placement another file; place, scale and turn stay. */
    public void replace(Placement placement, Path file) {
        inBackground("Replacing art", List.of(file), read -> at.session().run(
                new ReplaceArtCommand(placement, read.get(0).file().path(), read.get(0).file().sha256())));
    }

    private void inBackground(String name, List<Path> files, java.util.function.Consumer<List<Read>> use) {
        Job job = new Job(name) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                SubMonitor progress = SubMonitor.convert(monitor, files.size());
                List<Read> read = new ArrayList<>();
                List<String> troubles = new ArrayList<>();
                for (Path file : files) {
                    if (progress.isCanceled()) {
                        return Status.CANCEL_STATUS;
                    }
                    try {
                        read.add(read(file));
                    } catch (ArtException | StoreException e) {
                        troubles.add(e.getMessage());
                    }
                    progress.worked(1);
                }
                at.shell().getDisplay().asyncExec(() -> finish(name, read, troubles, use));
                return Status.OK_STATUS;
            }
        };
        job.setUser(true);
        job.schedule();
    }

    private Read read(Path file) throws ArtException, StoreException {
        ReadLimits limits = ReadLimits.usual();
        Art art = at.session().suite().readers().read(ArtSource.of(file, limits), limits);
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return new Read(ArtFiles.adopt(at.session().file(), file), dot > 0 ? name.substring(0, dot) : name, art.width(),
                art.height());
    }

    private void finish(String name, List<Read> read, List<String> troubles,
            java.util.function.Consumer<List<Read>> use) {
        if (at.shell().isDisposed()) {
            return;
        }
        if (!read.isEmpty()) {
            use.accept(read);
        }
        if (!troubles.isEmpty()) {
            MessageDialog.openError(at.shell(), name, String.join("\n", troubles));
        }
    }
}
