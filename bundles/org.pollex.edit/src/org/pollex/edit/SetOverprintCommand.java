/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.util.Map;
import org.pollex.model.design.DesignPackage;
import org.pollex.model.design.Mark;

/** Lets a mark print over what lies below it, or knock it out. */
public final class SetOverprintCommand extends FeatureCommand {

    /** @param overprint whether the inks below stay */
    public SetOverprintCommand(Mark mark, boolean overprint) {
        super("Set overprint", mark, Map.of(DesignPackage.Literals.MARK__OVERPRINT, overprint));
    }
}
