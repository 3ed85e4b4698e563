/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.gef.commands.CompoundCommand;
import org.pollex.edit.ReplaceArtCommand;
import org.pollex.editor.session.Notices;
import org.pollex.editor.work.Session;
import org.pollex.markers.StudioSuite;
import org.pollex.model.design.Design;
import org.pollex.model.design.Placement;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ArtState;
import org.pollex.model.store.JobFolder;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.model.store.StoreException;
import org.pollex.rules.Suite;

/**
 * What others did to the file of a design, to its art, its job and the catalogues that it sees, looked at in the
 * background whenever the user comes back to it.
 */
final class DiskWatch {

    private static final String DESIGN = "disk";
    private static final String ART = "art ";
    private static final String CATALOGUES = "catalogues";

    private final Session session;
    private final MessageBar bar;
    private final Consumer<Runnable> window;
    private final Runnable readAnew;
    private final Runnable toldMore;
    private final Set<String> told = new HashSet<>();
    private final Set<String> ignored = new HashSet<>();
    private String lastBeside;

    /**
     * @param readAnew  gives up the design as it is and reads the file again
     * @param toldMore  hears that {@link #untold} may answer otherwise
     */
    DiskWatch(Session session, MessageBar bar, Consumer<Runnable> window, Runnable readAnew, Runnable toldMore) {
        this.session = session;
        this.bar = bar;
        this.window = window;
        this.readAnew = readAnew;
        this.toldMore = toldMore;
    }

    private record Seen(Opened<Design> opened, boolean changed, String trouble,
            Map<String, ArtState.Changed> changedArt, String allBeside, Catalogued catalogued) {
    }

    /** The catalogues as they are now, or why they cannot be read. */
    private record Catalogued(Optional<Suite> suite, String trouble) {
    }

    /** Looks in the background. */
    void look() {
        Opened<Design> opened = session.opened();
        List<Placement> placements = placements(opened.model()).stream().map(EcoreUtil::copy).toList();
        Job job = Job.createSystem("Looking for changes of " + opened.path().getFileName(), monitor -> {
            Seen seen = see(opened, placements, monitor);
            window.accept(() -> tell(seen));
            return (IStatus) Status.OK_STATUS;
        });
        job.setPriority(Job.SHORT);
        job.schedule();
    }

    private static Seen see(Opened<Design> opened, List<Placement> placements, IProgressMonitor monitor) {
        boolean changed = false;
        String trouble = "";
        try {
            changed = ModelFiles.DESIGNS.changedOnDisk(opened);
        } catch (StoreException e) {
            trouble = e.getMessage();
        }
        Map<String, ArtState.Changed> art = new LinkedHashMap<>();
        StringBuilder all = new StringBuilder();
        for (Placement each : placements) {
            if (monitor.isCanceled()) {
                break;
            }
            ArtState state = ArtFiles.state(opened.path(), each);
            all.append(each.getArt()).append(' ').append(state).append('\n');
            if (state instanceof ArtState.Changed other) {
                art.put(each.getArt(), other);
            }
        }
        all.append(job(opened.path()));
        return new Seen(opened, changed, trouble, art, all.toString(), catalogued(opened.path()));
    }

    private static Catalogued catalogued(Path design) {
        try {
            return new Catalogued(Optional.of(StudioSuite.get().near(design.toAbsolutePath().getParent())), "");
        } catch (StoreException e) {
            return new Catalogued(Optional.empty(), e.getMessage());
        }
    }

    /** What tells whether the job beside the design changed, which may waive findings or lock the design. */
    private static String job(Path design) {
        try {
            Optional<Path> job = JobFolder.of(design).job();
            return job.isEmpty() ? "" : ArtFiles.sha256(job.get());
        } catch (StoreException e) {
            return e.getMessage();
        }
    }

    private void tell(Seen seen) {
        if (seen.opened() != session.opened()) {
            return;
        }
        if (!seen.trouble().isEmpty()) {
            bar.show(DESIGN, seen.trouble());
        } else if (!seen.changed()) {
            bar.clear(DESIGN);
        } else if (session.dirty()) {
            bar.show(DESIGN, "Another program changed this file; saving will ask what to keep.",
                    new Notices.Answer("Read anew and give up my changes", readAnew));
        } else {
            bar.clear(DESIGN);
            readAnew.run();
        }
        bar.clearAll(ART);
        told.clear();
        seen.changedArt().forEach(this::tellArt);
        toldMore.run();
        if (seen.catalogued().trouble().isEmpty()) {
            bar.clear(CATALOGUES);
        } else {
            bar.show(CATALOGUES, seen.catalogued().trouble());
        }
        Optional<Suite> other = seen.catalogued().suite().filter(each -> each != session.suite());
        if (other.isPresent()) {
            session.use(other.get());
        } else if (lastBeside != null && !lastBeside.equals(seen.allBeside())) {
            session.again();
        }
        lastBeside = seen.allBeside();
    }

    private void tellArt(String art, ArtState.Changed state) {
        if (!ignored.contains(art + state.sha256())) {
            told.add(art);
            bar.show(ART + art, "Another program changed " + Path.of(art).getFileName() + " since it was placed.",
                    new Notices.Answer("Place the changed file", () -> replace(art, state.sha256())),
                    new Notices.Answer("Ignore", () -> ignore(art, state.sha256())));
        }
    }

    private void ignore(String art, String sha256) {
        ignored.add(art + sha256);
        told.remove(art);
        toldMore.run();
    }

    /** What is left of a sentence on trouble without the changed art that this offers to place anew. */
    Optional<String> untold(Optional<String> trouble) {
        String left = trouble.orElse("");
        for (String art : told) {
            left = left.replaceAll(Pattern.quote(art) + ": [^.]*\\.", "");
        }
        return Optional.of(left.strip()).filter(each -> !each.isEmpty());
    }

    private void replace(String art, String sha256) {
        CompoundCommand all = new CompoundCommand("Place the changed file");
        for (Placement each : placements(session.design())) {
            if (art.equals(each.getArt()) && !sha256.equals(each.getSha256())) {
                all.add(new ReplaceArtCommand(each, art, sha256));
            }
        }
        session.run(all.unwrap());
    }

    private static List<Placement> placements(Design design) {
        List<Placement> found = new ArrayList<>();
        design.eAllContents().forEachRemaining((EObject each) -> {
            if (each instanceof Placement placement) {
                found.add(placement);
            }
        });
        return found;
    }
}
