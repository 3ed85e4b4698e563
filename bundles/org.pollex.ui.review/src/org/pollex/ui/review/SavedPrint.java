/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review;

import java.nio.file.Path;
import org.pollex.artwork.ArtException;
import org.pollex.markers.StudioSuite;
import org.pollex.model.design.Design;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;
import org.pollex.print.PrintException;
import org.pollex.print.Printed;
import org.pollex.print.ShippedLettering;
import org.pollex.print.item.ItemException;
import org.pollex.rules.Suite;

/** Prints designs as they are saved. Not for the window's thread. */
public final class SavedPrint {

    private SavedPrint() {
    }

    /** Reads and prints a design; takes up to some seconds. */
    public static Printed of(Path file) throws StoreException, PrintException, ItemException, ArtException {
        return of(file, ModelFiles.DESIGNS.load(file));
    }

    /** Prints a design that was read from a file. */
    public static Printed of(Path file, Design design) throws StoreException, PrintException, ItemException,
            ArtException {
        Suite suite = StudioSuite.get().near(file.toAbsolutePath().getParent());
        return suite.printer(design, suite.artBeside(file), new ShippedLettering()).print(design);
    }
}
