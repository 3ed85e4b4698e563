/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.markers;

import java.nio.file.Path;
import java.util.Set;
import org.pollex.model.design.Design;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Side;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;

/** Which designs a changed file of art concerns. */
public final class ArtUse {

    private ArtUse() {
    }

    /**
     * Whether a design places one of these files. Reads the design.
     *
     * @param files  absolute, without detours; they need not be there any more
     * @return true also for a design that cannot be read, since nobody knows what it places
     */
    public static boolean uses(Path design, Set<Path> files) {
        try {
            Design read = ModelFiles.DESIGNS.load(design);
            for (Side side : read.getSides()) {
                for (Layer layer : side.getLayers()) {
                    for (Mark mark : layer.getMarks()) {
                        if (mark instanceof Placement placement && placement.getArt() != null
                                && ArtFiles.inside(design, placement.getArt()).filter(files::contains).isPresent()) {
                            return true;
                        }
                    }
                }
            }
            return false;
        } catch (StoreException e) {
            return true;
        }
    }
}
