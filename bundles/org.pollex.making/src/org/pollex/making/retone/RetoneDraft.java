/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pollex.artwork.Art;
import org.pollex.making.desk.Desk;
import org.pollex.making.desk.SavingAs;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.TemporaryFolder;
import org.pollex.model.design.Design;
import org.pollex.model.design.Placement;
import org.pollex.model.store.ArtFiles;
import org.pollex.print.Printed;

/** A sibling that is made but not written: its art lies among temporary files until the draft is closed. */
public final class RetoneDraft implements AutoCloseable {

    private final Desk desk;
    private final Path from;
    private final Design design;
    private final Map<Placement, Path> art;
    private final List<String> told;
    private final String title;
    private final Path work;

    RetoneDraft(Desk desk, Path from, Design design, Map<Placement, Path> art, List<String> told, String title,
            Path work) {
        this.desk = desk;
        this.from = from;
        this.design = design;
        this.art = Map.copyOf(art);
        this.told = List.copyOf(told);
        this.title = title;
        this.work = work;
    }

    /** The sibling; art made for it is not in its place yet. */
    public Design design() {
        return design;
    }

    /** What was done to each mark, one sentence or more each. */
    public List<String> told() {
        return told;
    }

    /** Material and inks, for people. */
    String title() {
        return title;
    }

    /** What it prints. */
    public Printed printed() throws Refusal {
        Map<Placement, Art> arts = new HashMap<>();
        for (Placement placement : Marks.placements(design)) {
            arts.put(placement, desk.art(file(placement).orElseThrow()));
        }
        return desk.print(design, from, arts);
    }

    /** Writes it over whatever a file holds, whose last state is kept beside it. */
    void save(Path to) throws Refusal {
        new SavingAs(design, to).save(this::file, true);
    }

    /** The file of the art of a placement, made or the source's own. */
    Optional<Path> file(Placement placement) {
        return art.containsKey(placement) ? Optional.of(art.get(placement))
                : ArtFiles.inside(from, placement.getArt() == null ? "" : placement.getArt())
                        .filter(Files::isRegularFile);
    }

    /** Takes the temporary files away. */
    @Override
    public void close() {
        TemporaryFolder.remove(work);
    }
}
