/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import java.nio.charset.StandardCharsets;
import org.pollex.commandline.listing.Kind;
import org.pollex.commandline.listing.Lister;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists what the suite knows. */
@Command(name = "list", description = "Lists what the suite knows, the studio's own catalogue included.")
public final class ListWord extends Word {

    @Parameters(paramLabel = "KIND", description = "families, products, materials, inks, methods or checks")
    private Kind kind;

    @Option(names = "--json", description = "as JSON with all numbers; lengths in mm, zones as well-known text")
    private boolean json;

    public ListWord(Session session) {
        super(session);
    }

    @Override
    ExitCode work() throws Refusal {
        Lister lister = new Lister(session().suiteNear(session().cwd()));
        if (json) {
            session().out().print(new String(lister.json(kind), StandardCharsets.UTF_8));
        } else {
            lister.lines(kind).forEach(session()::say);
        }
        return ExitCode.CLEAN;
    }
}
