/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import java.util.concurrent.Callable;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import picocli.CommandLine.Command;

/** A word of the command line. */
@Command(mixinStandardHelpOptions = true, versionProvider = VersionText.class, usageHelpWidth = 100,
        parameterListHeading = "%nWhat to name:%n", optionListHeading = "%nOptions:%n",
        descriptionHeading = "%n", footerHeading = "%n")
abstract class Word implements Callable<Integer> {

    private final Session session;

    Word(Session session) {
        this.session = session;
    }

    /** The call that this word is part of. */
    Session session() {
        return session;
    }

    /**
     * Does the work.
     *
     * @throws Refusal when it cannot be done
     */
    abstract ExitCode work() throws Refusal;

    @Override
    public Integer call() throws Refusal {
        return work().number();
    }
}
