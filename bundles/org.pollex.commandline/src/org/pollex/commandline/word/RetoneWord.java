/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import java.util.Optional;
import org.pollex.making.retone.RetoneOrder;
import org.pollex.making.retone.Retoner;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes the sibling of a design for another material. */
@Command(name = "retone", description = {"Makes the sibling of a design for another material: light stays light, dark "
    + "stays dark.",
    "One light ink on a dark material prints the light parts of the art and leaves the dark ones bare, with a line "
    + "round dark parts that would melt into the material. The art of the design is not touched. Prints what was "
    + "changed; the same call again carries changes of the design over."})
public final class RetoneWord extends Word {

    @Parameters(paramLabel = "D.design", description = "the design")
    private String design;

    @Option(names = "--material", paramLabel = "ID", required = true, description = "material of the sibling")
    private String material;

    @Option(names = "--ink", paramLabel = "ID",
            description = "the one ink of the sibling; else the inks of the design when it has several, or the ink "
            + "that shows best on the material")
    private String ink;

    @Option(names = "--out", paramLabel = "D2.design", required = true,
            description = "the sibling; what the file holds is replaced and its last state kept beside it")
    private String out;

    public RetoneWord(Session session) {
        super(session);
    }

    @Override
    ExitCode work() throws Refusal {
        return new Retoner(session()).retone(new RetoneOrder(design, material, Optional.ofNullable(ink), out));
    }
}
