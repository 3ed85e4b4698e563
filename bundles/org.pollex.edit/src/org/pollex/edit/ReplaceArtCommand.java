/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.util.Map;
import org.pollex.model.design.DesignPackage;
import org.pollex.model.design.Placement;

/** Replaces the art file of a placement; place, scale and turn stay. */
public final class ReplaceArtCommand extends FeatureCommand {

    /** @param art path relative to the design; @param sha256 of the file, lower-case hex */
    public ReplaceArtCommand(Placement placement, String art, String sha256) {
        super("Replace art", placement, Map.of(DesignPackage.Literals.PLACEMENT__ART, art,
                DesignPackage.Literals.PLACEMENT__SHA256, sha256));
    }
}
