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

/** Gives a mark another name. */
public final class RenameMarkCommand extends FeatureCommand {

    /** @param name shown in lists; may be empty */
    public RenameMarkCommand(Mark mark, String name) {
        super("Rename mark", mark, Map.of(DesignPackage.Literals.MARK__NAME, name));
    }
}
