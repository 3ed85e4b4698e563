/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.session;

import java.io.PrintStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import org.pollex.model.store.StoreException;
import org.pollex.rules.Suite;

/**
 * One call of the command line.
 *
 * @param out       takes results for people
 * @param err       takes one-line errors and progress
 * @param cwd       folder against which relative paths are taken
 * @param suite     families, catalogue and checks
 * @param today     date of proofs
 * @param terminal  whether errors go to a terminal, so that progress may be shown
 */
public record Session(PrintStream out, PrintStream err, Path cwd, Suite suite, LocalDate today, boolean terminal) {

    /**
     * The file that a word of the call names.
     *
     * @throws Refusal when the system knows no such name
     */
    public Path file(String text) throws Refusal {
        if (text.isBlank()) {
            throw Refusal.wrongUse("A file name is empty; write the name of a file.");
        }
        try {
            return cwd.resolve(text).normalize();
        } catch (InvalidPathException e) {
            throw Refusal.wrongUse(text + ": this is no file name on this system; choose another.");
        }
    }

    /** The same call with results for people going elsewhere. */
    public Session toldTo(PrintStream other) {
        return new Session(other, err, cwd, suite, today, terminal);
    }

    /**
     * The suite as a design in a folder sees it, the studio's own catalogues over the installed ones.
     *
     * @throws Refusal when a catalogue there cannot be read
     */
    public Suite suiteNear(Path folder) throws Refusal {
        try {
            return suite.near(folder);
        } catch (StoreException e) {
            throw new Refusal(ExitCode.UNREADABLE, e.getMessage(), e);
        }
    }

    /** A path as the user sees it: relative to the folder of the call where it lies below, with forward slashes. */
    public String shown(Path file) {
        Path absolute = file.toAbsolutePath().normalize();
        Path base = cwd.toAbsolutePath().normalize();
        Path shown = absolute.startsWith(base) && !absolute.equals(base) ? base.relativize(absolute) : absolute;
        return shown.toString().replace('\\', '/');
    }

    /** Tells the user one line. */
    public void say(String line) {
        out.println(line);
    }

    /** Tells one error on one line. */
    public void complain(String sentence) {
        err.println(Refusal.oneLine(sentence));
    }
}
