/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import org.pollex.artwork.ArtNotice;
import org.pollex.model.design.Mark;

/** Notices about inks that a mark asks for and the design does not have. */
final class InkNotice {

    private InkNotice() {
    }

    static ArtNotice missing(Mark mark, String ink, String instead) {
        return new ArtNotice(ArtNotice.Kind.UNSUPPORTED, "ink", MarkPlace.text(mark.getId()),
                "Mark " + MarkPlace.label(mark) + " asks for the ink \"" + ink + "\", which the design does not have; "
                        + instead + ". Add the ink to the design or choose another one.");
    }
}
