/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import org.pollex.commandline.demo.SampleRun;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes a finished sample job. */
@Command(name = "demo", description = {"Writes a finished sample job of an invented client and runs it through.",
    "Its findings are meant to be seen; the call ends with 0 although there are some."})
public final class DemoWord extends Word {

    @Parameters(paramLabel = "DIR", arity = "0..1", defaultValue = "summer-season",
        description = "folder to write; it must not be there, or be empty, or hold this job (${DEFAULT-VALUE})")
    private String folder;

    public DemoWord(Session session) {
        super(session);
    }

    @Override
    ExitCode work() throws Refusal {
        return new SampleRun(session()).write(folder);
    }
}
