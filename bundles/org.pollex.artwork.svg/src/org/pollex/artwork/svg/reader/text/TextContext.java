/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.text;

import java.awt.geom.Path2D;
import java.util.Optional;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.font.ShippedFonts;
import org.pollex.artwork.svg.reader.limits.Budget;
import org.pollex.artwork.svg.reader.report.Notices;
import org.pollex.artwork.svg.reader.style.Cascade;
import org.pollex.artwork.svg.reader.tree.Node;

/**
 * What layout needs from outside.
 *
 * @param width   width of the view port in user units
 * @param height  height of the view port
 * @param paths   finds the path that a textPath element follows, in user units
 */
public record TextContext(Cascade cascade, Notices notices, Budget budget, ShippedFonts fonts, double width,
        double height, PathFinder paths) {

    /** Finds paths for text. */
    @FunctionalInterface
    public interface PathFinder {
        /** The path of a textPath element; empty when there is none. */
        Optional<Path2D.Double> find(Node textPath) throws ArtException;
    }
}
