/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import java.util.Locale;
import java.util.Optional;
import org.pollex.making.retone.RetoneOrder;
import org.pollex.making.retone.Retoner;
import org.pollex.making.retone.Updating;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import org.pollex.print.retone.RetoneStyle;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes the sibling of a design for another material, or brings one up to date. */
@Command(name = "retone", description = {"Makes the sibling of a design for another material: light stays light, dark "
    + "stays dark.",
    "One light ink on a dark material prints the light parts of the art and leaves the dark ones bare, with a line "
    + "round dark parts that would melt into the material. The art of the design is not touched. Prints what was "
    + "changed.",
    "With --update, D.design is a sibling: where the art of its source changed since, it is made anew; what was moved, "
    + "scaled or turned by hand stays so, and so does everything else in it."})
public final class RetoneWord extends Word {

    @Parameters(paramLabel = "D.design", description = "the design; with --update, the sibling")
    private String design;

    @Option(names = "--material", paramLabel = "ID", description = "material of the sibling")
    private String material;

    @Option(names = "--ink", paramLabel = "ID",
            description = "the one ink of the sibling; else the inks of the design when it has several, or the ink "
            + "that shows best on the material")
    private String ink;

    @Option(names = "--lines", paramLabel = "WHERE", defaultValue = "masses",
            description = "lines round dark parts: masses, everywhere or nowhere (default: ${DEFAULT-VALUE})")
    private String lines;

    @Option(names = "--grow", description = "give light parts half of the outlines round them")
    private boolean grow;

    @Option(names = "--apart", description = "choose several inks so that parts which differ stay apart, even where "
            + "another ink is nearer to a colour; hues may change (default: every colour in the nearest ink or bare)")
    private boolean apart;

    @Option(names = "--out", paramLabel = "D2.design",
            description = "the sibling; what the file holds is replaced and its last state kept beside it")
    private String out;

    @Option(names = "--update", description = "bring the sibling up to date with the art of its source")
    private boolean update;

    @Option(names = "--force", description = "with --update, also where choices made by hand are lost")
    private boolean force;

    public RetoneWord(Session session) {
        super(session);
    }

    @Override
    ExitCode work() throws Refusal {
        if (update) {
            if (material != null || ink != null || out != null || grow || apart || !"masses".equals(lines)) {
                throw Refusal.wrongUse("With --update the sibling keeps its material, ink and style; leave the other "
                        + "options out.");
            }
            return new Updating(session()).update(design, force);
        }
        if (material == null || out == null) {
            throw Refusal.wrongUse("retone needs --material and --out, or --update to bring a sibling up to date.");
        }
        if (apart && ink != null) {
            throw Refusal.wrongUse("--apart chooses among several inks; leave out --ink, or --apart.");
        }
        return new Retoner(session()).retone(new RetoneOrder(design, material, Optional.ofNullable(ink), out,
                new RetoneStyle(where(), grow, apart)));
    }

    private RetoneStyle.Lines where() throws Refusal {
        for (RetoneStyle.Lines each : RetoneStyle.Lines.values()) {
            if (each.name().toLowerCase(Locale.ROOT).equals(lines)) {
                return each;
            }
        }
        throw Refusal.wrongUse("--lines " + lines + ": write masses, everywhere or nowhere.");
    }
}
