/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.util.List;
import java.util.Map;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignPackage;

/** Chooses the inks of a design, in printing order. */
public final class ChooseInksCommand extends FeatureCommand {

    /** @param inks ids of the inks */
    public ChooseInksCommand(Design design, List<String> inks) {
        super("Choose inks", design, Map.of(DesignPackage.Literals.DESIGN__INKS, List.copyOf(inks)));
    }
}
