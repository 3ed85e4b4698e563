/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import java.util.List;
import java.util.Optional;
import org.pollex.making.design.DesignMaker;
import org.pollex.making.design.Order;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes designs from art. */
@Command(name = "new", description = {"Makes a design with art placed on it.",
    "Art that states a physical size is placed at that size with the middle of what it prints in the middle of the "
    + "safe zone; art that states none, and any art with --largest, as large as the safe zone allows. The art is "
    + "copied unchanged into art/ beside the design.",
    "Without --ink the inks follow the method: one ink of the best contrast on the material, or the inks nearest to "
    + "the colours of the art, or none where process inks mix every colour."})
public final class NewWord extends Word {

    @Parameters(paramLabel = "OUT", description = "design to write; a folder when --front is a folder of SVG files")
    private String out;

    @Option(names = "--product", required = true, paramLabel = "ID", description = "see \"list products\"")
    private String product;

    @Option(names = "--material", required = true, paramLabel = "ID", description = "see \"list materials\"")
    private String material;

    @Option(names = "--method", required = true, paramLabel = "ID", description = "see \"list methods\"")
    private String method;

    @Option(names = "--ink", paramLabel = "ID", description = "see \"list inks\"; may be repeated, in printing order")
    private List<String> inks = List.of();

    @Option(names = "--front", paramLabel = "F.svg", description = "art of the front, or a folder: a design for each")
    private String front;

    @Option(names = "--back", paramLabel = "B.svg", description = "art of the back")
    private String back;

    @Option(names = "--largest", description = "places the art as large as the safe zone allows")
    private boolean largest;

    @Option(names = "--force", description = "replaces a design that is there; its last state is kept beside it")
    private boolean force;

    public NewWord(Session session) {
        super(session);
    }

    @Override
    ExitCode work() throws Refusal {
        Order order = new Order(product, material, method, inks, Optional.ofNullable(front), Optional.ofNullable(back),
                largest, force);
        return new DesignMaker(session()).make(out, order);
    }
}
