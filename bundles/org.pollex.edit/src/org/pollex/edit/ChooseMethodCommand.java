/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.util.Map;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignPackage;

/** Chooses the print method of a design. */
public final class ChooseMethodCommand extends FeatureCommand {

    /** @param method id of the method */
    public ChooseMethodCommand(Design design, String method) {
        super("Choose method", design, Map.of(DesignPackage.Literals.DESIGN__METHOD, method));
    }
}
