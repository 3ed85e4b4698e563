/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.session;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CommandStack;
import org.pollex.model.design.Design;
import org.pollex.rules.Suite;

/**
 * A design that is open: its model, its history and what is known of its print. Asked and told in the window's thread
 * only; what {@link #known()} gives may be read in any thread.
 */
public interface DesignSession {

    /** The design as it is now. Changed by commands only. */
    Design design();

    /** The file it came from. */
    Path file();

    /** Catalogues, checks and printers as a design in that folder sees them. */
    Suite suite();

    /** The history of undo. */
    CommandStack history();

    /** Why nothing may be changed, such as a signed revision; empty when all may. */
    Optional<String> locked();

    /** Does a command through the history; does nothing when the design is locked or the command cannot be done. */
    void run(Command command);

    /** The latest print with its findings; empty before the first is made, or when the design cannot be printed. */
    Optional<Known> known();

    /** Whether {@link #known()} shows the design as it is now; it lags behind by the time a check takes. */
    boolean fresh();

    /** Why the design cannot be printed now, in one sentence; empty when it can. */
    Optional<String> trouble();

    /** Adds a listener. */
    void add(SessionListener listener);

    /** Takes a listener off. */
    void remove(SessionListener listener);
}
