/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.word;

import java.nio.file.Path;
import org.pollex.making.desk.Desk;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.SafeOutput;
import org.pollex.making.session.Session;
import org.pollex.output.picture.MaterialPicture;
import org.pollex.output.picture.PictureOptions;
import org.pollex.output.picture.PngFile;
import org.pollex.print.Printed;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a picture of a design on its material. */
@Command(name = "picture", description = "Writes a picture of a design on its material, both sides beside each other.")
public final class PictureWord extends Word {

    @Parameters(paramLabel = "D.design", description = "the design")
    private String design;

    @Option(names = "--png", required = true, paramLabel = "F", description = "file to write")
    private String png;

    @Option(names = "--dpi", paramLabel = "N", defaultValue = "600",
            description = "pixels an inch, 36 to 2400; 600 unless given")
    private int dpi;

    @Option(names = "--zones", description = "shows the zones over the print, with a legend")
    private boolean zones;

    public PictureWord(Session session) {
        super(session);
    }

    @Override
    ExitCode work() throws Refusal {
        Path to = session().file(png);
        byte[] bytes;
        try {
            PictureOptions options = PictureOptions.of(dpi).withZones(zones);
            Printed printed = new Desk(session()).open(session().file(design)).printed();
            bytes = PngFile.bytes(MaterialPicture.of(printed, options), dpi);
        } catch (IllegalArgumentException e) {
            throw Refusal.wrongUse(e.getMessage());
        }
        SafeOutput.write(to, session().shown(to), bytes);
        session().say("Wrote " + session().shown(to) + ".");
        return ExitCode.CLEAN;
    }
}
