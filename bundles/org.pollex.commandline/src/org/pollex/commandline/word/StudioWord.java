/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import picocli.CommandLine.Command;

/** The command itself, which does nothing without a word. */
@Command(name = StudioWord.NAME, description = "Prepares art for print on thumb-sized things.",
        commandListHeading = "%nWords:%n", footer = {"Ends with 0 when all is clean, 1 with findings, 2 for wrong use,",
            "3 when an input cannot be read, 4 when an output cannot be written."})
public final class StudioWord extends Word {

    /** What the command is called in help and completion. */
    public static final String NAME = "studio";

    public StudioWord(Session session) {
        super(session);
    }

    @Override
    ExitCode work() throws Refusal {
        throw Refusal.wrongUse("A word is missing; see \"" + NAME + " --help\" for all of them.");
    }
}
