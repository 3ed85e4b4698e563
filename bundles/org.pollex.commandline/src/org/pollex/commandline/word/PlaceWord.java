/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import java.util.Optional;
import org.pollex.making.design.PlaceOrder;
import org.pollex.making.design.Placer;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Places the art of a side as large as it goes. */
@Command(name = "place", description = {"Places the art of a side as large as its safe zone allows, all marks as one.",
    "Prints the scale, the share of the safe zone, the edges that touch, and what a half turn or another product "
    + "would gain."})
public final class PlaceWord extends Word {

    @Parameters(paramLabel = "D.design", description = "the design")
    private String design;

    @Option(names = "--side", paramLabel = "NAME", defaultValue = "front", description = "front (the default) or back")
    private String side;

    @Option(names = "--turn", paramLabel = "DEG|best",
            description = "turn of the first mark in degrees, clockwise, or best; as it stands unless given")
    private String turn;

    @Option(names = "--out", paramLabel = "D2.design",
            description = "writes another design; else the design is replaced and its last state kept beside it")
    private String out;

    public PlaceWord(Session session) {
        super(session);
    }

    @Override
    ExitCode work() throws Refusal {
        return new Placer(session()).place(new PlaceOrder(design, side, Optional.ofNullable(turn),
                Optional.ofNullable(out)));
    }
}
