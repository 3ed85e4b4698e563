/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.look;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** Changes between the light and the dark appearance; the choice is kept. */
public final class AppearanceHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        (Appearance.dark() ? Appearance.LIGHT : Appearance.DARK).choose();
        return null;
    }
}
