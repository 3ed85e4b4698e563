/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.pollex.edit.BringBackCommand;
import org.pollex.editor.session.Notices;
import org.pollex.editor.work.KeepJob;
import org.pollex.editor.work.Recovery;
import org.pollex.editor.work.Session;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;

/** Unsaved work on one design: kept while there is some, offered back when a program was killed before. */
final class Unsaved {

    private static final String SUBJECT = "unsaved";

    private final Path file;
    private final Recovery recovery;
    private final KeepJob keeping;

    Unsaved(Path file) {
        this.file = file;
        recovery = new Recovery(Platform.getStateLocation(Platform.getBundle("org.pollex.editor")).toPath()
                .resolve("unsaved"));
        keeping = new KeepJob(recovery, file);
    }

    /** Offers what a killed program left, as one change that can be undone. */
    void offer(Session session, MessageBar bar) {
        try {
            Recovery.Kept kept = recovery.kept(file).orElse(null);
            if (kept != null) {
                recovery.setAside(file);
                String when = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                        .withZone(ZoneId.systemDefault()).format(kept.when());
                String since = kept.base().equals(session.opened().stamp().sha256()) ? ""
                        : " The file was changed since, which bringing it back would undo.";
                bar.show(SUBJECT, "Work of " + when + " on this design was not saved when the program ended." + since,
                        new Notices.Answer("Bring it back", () -> bringBack(session, bar, kept)),
                        new Notices.Answer("Throw it away", this::throwAway));
            }
        } catch (IOException e) {
            ILog.of(Unsaved.class).warn("Unsaved work could not be looked for", e);
        }
    }

    private void bringBack(Session session, MessageBar bar, Recovery.Kept kept) {
        try {
            keeping.takeOver();
            session.run(new BringBackCommand("Bring back unsaved work", session.design(),
                    ModelFiles.DESIGNS.readKeeping(new ByteArrayInputStream(kept.bytes()), file.toString())));
        } catch (StoreException e) {
            bar.show(SUBJECT, "The unsaved work cannot be read and is left where it is. " + e.getMessage());
        }
    }

    private void throwAway() {
        try {
            recovery.dropAside(file);
        } catch (IOException e) {
            ILog.of(Unsaved.class).warn("A copy of unsaved work could not be removed", e);
        }
    }

    /** The design changed. */
    void changed(Session session) {
        if (session.dirty()) {
            keeping.keep(EcoreUtil.copy(session.design()), session.opened().stamp().sha256());
        } else {
            keeping.drop();
        }
    }

    /** The work is saved, or the user closed without saving it. */
    void drop() {
        keeping.drop();
    }
}
