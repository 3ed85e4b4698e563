/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Session;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints a script that teaches a shell the words and options. */
@Command(name = "completion", description = {"Prints a script that completes words and options in bash and zsh.",
    "Use it with: source <(" + StudioWord.NAME + " completion)"})
public final class CompletionWord extends Word {

    @Spec
    private CommandSpec spec;

    public CompletionWord(Session session) {
        super(session);
    }

    @Override
    ExitCode work() {
        session().out().print(AutoComplete.bash(StudioWord.NAME, spec.root().commandLine()));
        return ExitCode.CLEAN;
    }
}
