/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.Ink;

/** Takes an ink out of a catalogue. */
public final class RemoveInkCommand extends ListCommand<Ink> {

    /** @param ink one of the catalogue */
    public RemoveInkCommand(Catalogue catalogue, Ink ink) {
        super("Remove ink", ink, catalogue.getInks(), null, 0);
    }
}
