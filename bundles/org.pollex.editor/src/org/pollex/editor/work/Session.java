/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.work;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.commands.CommandStackEventListener;
import org.pollex.editor.figure.MarkLook;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.editor.session.SessionListener;
import org.pollex.model.design.Design;
import org.pollex.model.design.Mark;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.model.store.StoreException;
import org.pollex.rules.Suite;

/**
 * An open design. Every change is followed by a print and a check of a copy in the background; the newest wins. All
 * methods belong to the window's thread, which {@code window} reaches from others.
 */
public final class Session implements DesignSession {

    private final CommandStack history;
    private Suite suite;
    private final Consumer<Runnable> window;
    private final List<SessionListener> listeners = new CopyOnWriteArrayList<>();
    private PrintJob printing;
    private MarkLooks looks;
    private final CommandStackEventListener following = event -> {
        if (event.isPostChangeEvent()) {
            changed();
        }
    };
    private Opened<Design> opened;
    private boolean unsaved;
    private Optional<Known> known = Optional.empty();
    private Optional<String> trouble = Optional.empty();
    private Optional<String> lock = Optional.empty();
    private long change;
    private long shown = -1;
    private boolean closed;

    /**
     * @param opened   the design, which the session changes from now on
     * @param suite    as a design in its folder sees it
     * @param history  where commands go
     * @param window   runs something in the window's thread, soon, as long as there is one
     */
    public Session(Opened<Design> opened, Suite suite, CommandStack history, Consumer<Runnable> window) {
        this.opened = opened;
        this.history = history;
        this.window = window;
        equip(suite);
        history.addCommandStackEventListener(following);
    }

    private void equip(Suite with) {
        suite = with;
        CachedArt art = new CachedArt(with, opened.path());
        looks = new MarkLooks(with, art, answer -> window.accept(() -> looked(answer)));
        printing = new PrintJob(with, opened.path(), art, answer -> window.accept(() -> printed(answer)));
    }

    /** Goes on with other catalogues: everything is looked at, printed and checked anew with them. */
    public void use(Suite other) {
        printing.cancel();
        looks.close();
        equip(other);
        changed();
    }

    /** Begins the first print. */
    public void start() {
        printing.ask(change, EcoreUtil.copy(design()));
    }

    /** Ends all work in the background; the session must not be used afterwards. */
    public void close() {
        closed = true;
        history.removeCommandStackEventListener(following);
        printing.cancel();
        looks.close();
        listeners.clear();
    }

    /** Goes on with another state of the same file; the history begins anew. Dirty until saved when {@code unsaved}. */
    public void take(Opened<Design> other, boolean notSaved) {
        opened = other;
        unsaved = notSaved;
        looks.forget();
        history.flush();
        changed();
    }

    /** The design and the file as it was when it was read or saved. */
    public Opened<Design> opened() {
        return opened;
    }

    /** Whether the design differs from what was read or saved last. */
    public boolean dirty() {
        return unsaved || history.isDirty();
    }

    private void changed() {
        change++;
        printing.ask(change, EcoreUtil.copy(design()));
        listeners.forEach(SessionListener::changed);
    }

    /** Tells everybody that something outside the model changed, such as an art file, and prints anew. */
    public void again() {
        looks.forget();
        changed();
    }

    private void printed(PrintJob.Answer answer) {
        if (closed || answer.change() < shown) {
            return;
        }
        shown = answer.change();
        trouble = answer.trouble();
        lock = answer.lock();
        known = answer.known();
        known.ifPresent(each -> listeners.forEach(listener -> listener.known(each)));
        if (known.isEmpty() || trouble.isPresent()) {
            listeners.forEach(SessionListener::changed);
        }
    }

    private void looked(Runnable apply) {
        if (!closed) {
            apply.run();
            listeners.forEach(SessionListener::changed);
        }
    }

    /** How a mark looks now; a placeholder until that is known. */
    public MarkLook look(Mark mark) {
        return looks.of(design(), mark);
    }

    @Override
    public Design design() {
        return opened.model();
    }

    @Override
    public Path file() {
        return opened.path();
    }

    @Override
    public Suite suite() {
        return suite;
    }

    @Override
    public CommandStack history() {
        return history;
    }

    @Override
    public Optional<String> locked() {
        return lock;
    }

    @Override
    public void run(Command command) {
        if (lock.isEmpty() && command != null && command.canExecute()) {
            history.execute(command);
        }
    }

    @Override
    public Optional<Known> known() {
        return known;
    }

    @Override
    public boolean fresh() {
        return shown == change && known.isPresent();
    }

    @Override
    public Optional<String> trouble() {
        return trouble;
    }

    @Override
    public void add(SessionListener listener) {
        listeners.add(listener);
    }

    @Override
    public void remove(SessionListener listener) {
        listeners.remove(listener);
    }

    /**
     * Saves where the design came from.
     *
     * @throws org.pollex.model.store.ChangedOnDiskException when somebody else changed the file since
     */
    public void save() throws StoreException {
        opened = ModelFiles.DESIGNS.save(opened);
        unsaved = false;
        history.markSaveLocation();
    }

    /** Saves over whatever is in the file now. */
    public void overwrite() throws StoreException {
        opened = ModelFiles.DESIGNS.replace(design(), opened.path());
        unsaved = false;
        history.markSaveLocation();
    }
}
