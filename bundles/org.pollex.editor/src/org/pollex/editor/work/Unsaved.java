/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.work;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.function.Consumer;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.pollex.editor.session.Notices;
import org.pollex.model.store.ModelStore;
import org.pollex.model.store.Opened;
import org.pollex.model.store.StoreException;

/**
 * Unsaved work on one file: kept while there is some, offered back when a program was killed before. Used in the
 * window's thread.
 *
 * @param <T> root of what the file holds
 */
public final class Unsaved<T extends EObject> {

    private static final String SUBJECT = "unsaved";

    private final Path file;
    private final ModelStore<T> store;
    private final Recovery recovery;
    private final KeepJob<T> keeping;

    /** @param store  of the kind that the file is */
    public Unsaved(Path file, ModelStore<T> store) {
        this.file = file;
        this.store = store;
        recovery = new Recovery(Platform.getStateLocation(Platform.getBundle("org.pollex.editor")).toPath()
                .resolve("unsaved"));
        keeping = new KeepJob<>(recovery, file, store);
    }

    /**
     * Offers what a killed program left.
     *
     * @param opened     the file as it was opened
     * @param bringBack  takes it as one change that can be undone
     */
    public void offer(Opened<T> opened, Notices bar, Consumer<T> bringBack) {
        try {
            Recovery.Kept kept = recovery.kept(file).orElse(null);
            if (kept != null) {
                recovery.setAside(file);
                String when = DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                        .withZone(ZoneId.systemDefault()).format(kept.when());
                String since = kept.base().equals(opened.stamp().sha256()) ? ""
                        : " The file was changed since, which bringing it back would undo.";
                bar.show(SUBJECT, "Work of " + when + " on this " + store.kind().word()
                        + " was not saved when the program ended." + since,
                        new Notices.Answer("Bring it back", () -> bringBack(bar, kept, bringBack)),
                        new Notices.Answer("Throw it away", this::throwAway));
            }
        } catch (IOException e) {
            ILog.of(Unsaved.class).warn("Unsaved work could not be looked for", e);
        }
    }

    private void bringBack(Notices bar, Recovery.Kept kept, Consumer<T> bringBack) {
        try {
            keeping.takeOver();
            bringBack.accept(store.readKeeping(new ByteArrayInputStream(kept.bytes()), file.toString()));
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

    /**
     * What is worked on changed.
     *
     * @param opened  the file as it was opened or saved last, with the model as it is now
     * @param dirty   whether the file holds something else
     */
    public void changed(Opened<T> opened, boolean dirty) {
        if (dirty) {
            keeping.keep(EcoreUtil.copy(opened.model()), opened.stamp().sha256());
        } else {
            keeping.drop();
        }
    }

    /** The work is saved, or the user closed without saving it. */
    public void drop() {
        keeping.drop();
    }
}
