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

/** Chooses the product of a design; the marks stay where they are. */
public final class ChooseProductCommand extends FeatureCommand {

    /** @param product id of the product */
    public ChooseProductCommand(Design design, String product) {
        super("Choose product", design, Map.of(DesignPackage.Literals.DESIGN__PRODUCT, product));
    }
}
