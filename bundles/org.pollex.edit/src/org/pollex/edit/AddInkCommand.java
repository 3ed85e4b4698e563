/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.Ink;

/** Adds an ink to a catalogue. */
public final class AddInkCommand extends ListCommand<Ink> {

    /**
     * @param ink    in no catalogue yet, with an id that the catalogue does not have
     * @param index  its place among the inks, 0 to their number
     */
    public AddInkCommand(Catalogue catalogue, Ink ink, int index) {
        super("Add ink", ink, null, catalogue.getInks(), index);
        if (ink.getId() == null || catalogue.getInks().stream().anyMatch(each -> ink.getId().equals(each.getId()))) {
            throw new IllegalArgumentException("The id " + ink.getId() + " is none or there already.");
        }
    }
}
