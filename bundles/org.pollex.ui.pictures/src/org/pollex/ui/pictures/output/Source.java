/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures.output;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.pollex.artwork.ArtException;
import org.pollex.editor.session.Known;
import org.pollex.markers.DesignCheck;
import org.pollex.markers.StudioSuite;
import org.pollex.model.design.Design;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;
import org.pollex.print.PrintException;
import org.pollex.print.Printed;
import org.pollex.print.ShippedLettering;
import org.pollex.print.item.ItemException;
import org.pollex.rules.Finding;
import org.pollex.rules.Suite;

/**
 * A design to make something from.
 *
 * @param design  its file
 * @param known   its print as the editor has it, with changes not saved yet; empty when the file is to be read
 */
public record Source(Path design, Optional<Known> known) {

    /** A design as it is on disk. */
    public static Source saved(Path design) {
        return new Source(design, Optional.empty());
    }

    /** Makes an output; reads and checks the file first unless the print is there. */
    byte[] make(Output output, Wishes wishes) throws StoreException, PrintException, ItemException,
            ArtException, InterruptedException {
        long start = System.nanoTime();
        Suite suite = StudioSuite.get().near(design.toAbsolutePath().getParent());
        if (known.isPresent()) {
            return output.of(design, known.get(), suite, wishes, millis(start));
        }
        Design read = ModelFiles.DESIGNS.load(design);
        Printed printed = suite.printer(read, suite.artBeside(design), new ShippedLettering()).print(read);
        List<Finding> findings = DesignCheck.waived(design, suite.check(printed));
        return output.of(design, new Known(printed, findings), suite, wishes, millis(start));
    }

    private static long millis(long start) {
        return (System.nanoTime() - start) / 1_000_000;
    }
}
