/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.pollex.making.desk.Desk;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import org.pollex.model.design.Design;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.model.store.StoreException;

/** Brings the file of a sibling up to date. */
public final class Updating {

    private final Session session;

    /** Updates for a call. */
    public Updating(Session session) {
        this.session = session;
    }

    /**
     * Makes marks anew whose source has other art by now; the last state of the file is kept beside it.
     *
     * @param force  whether choices made by hand may be lost
     */
    public ExitCode update(String sibling, boolean force) throws Refusal {
        Path file = session.file(sibling).toAbsolutePath().normalize();
        try {
            Opened<Design> opened = ModelFiles.DESIGNS.open(file);
            Optional<Renewal> renewal = Renewal.of(session, file, opened.model());
            if (renewal.isEmpty()) {
                throw Refusal.wrongUse(session.shown(file) + ": it was not re-toned from another design; make the "
                        + "sibling with --material and --out.");
            }
            if (renewal.get().changed().isEmpty()) {
                session.say(session.shown(file) + ": is up to date with " + session.shown(renewal.get().source())
                        + ".");
                return ExitCode.CLEAN;
            }
            if (!force && !renewal.get().lost().isEmpty()) {
                throw Refusal.wrongUse(session.shown(file) + ": making it anew loses "
                        + String.join(", and ", renewal.get().lost()) + "; add --force to go on.");
            }
            put(opened.model(), renewal.get().make(() -> false));
            ModelFiles.DESIGNS.save(opened);
            session.say(session.shown(file) + ": made anew from " + String.join(", ", renewal.get().changed())
                    + " of " + session.shown(renewal.get().source()) + ".");
            return ExitCode.CLEAN;
        } catch (StoreException e) {
            throw new Refusal(Desk.code(e), e.getMessage(), e);
        }
    }

    private static void put(Design design, Design anew) {
        design.getSides().clear();
        design.getSides().addAll(EcoreUtil.copyAll(anew.getSides()));
    }
}
