/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.look;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.e4.ui.css.swt.theme.ITheme;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.ui.PlatformUI;

/** Changes between the light and the dark appearance; the choice is kept. */
public final class AppearanceHandler extends AbstractHandler {

    /** Id of the light theme. */
    public static final String LIGHT = "org.eclipse.e4.ui.css.theme.e4_default";
    /** Id of the dark theme. */
    public static final String DARK = "org.eclipse.e4.ui.css.theme.e4_dark";

    @Override
    public Object execute(ExecutionEvent event) {
        set(!dark());
        return null;
    }

    /** Whether the dark appearance is on. */
    public static boolean dark() {
        ITheme theme = engine().getActiveTheme();
        return theme != null && theme.getId().startsWith(DARK);
    }

    /** Puts an appearance on. */
    public static void set(boolean dark) {
        engine().setTheme(dark ? DARK : LIGHT, true);
    }

    private static IThemeEngine engine() {
        return PlatformUI.getWorkbench().getService(IThemeEngine.class);
    }
}
