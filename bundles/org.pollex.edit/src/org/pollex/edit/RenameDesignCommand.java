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

/** Gives a design another name. */
public final class RenameDesignCommand extends FeatureCommand {

    /** @param name shown on proofs; may be empty */
    public RenameDesignCommand(Design design, String name) {
        super("Rename design", design, Map.of(DesignPackage.Literals.DESIGN__NAME, name));
    }
}
