/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app.look;

import java.lang.reflect.Method;
import java.util.Locale;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.e4.ui.css.swt.theme.ITheme;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/**
 * Is the window light or dark? The choice is kept; where none was made, the window is as the desktop is. The system
 * property {@value #PROPERTY} ({@code light}, {@code dark}, {@code system}) overrules the choice for one start.
 */
public enum Appearance {
    /** As the desktop is. */
    SYSTEM("As the &desktop"),
    /** Dark words on a light window. */
    LIGHT("&Light"),
    /** Light words on a dark window. */
    DARK("Dar&k");

    /** Overrules the choice for one start. */
    public static final String PROPERTY = "org.pollex.appearance";
    /** Node of the preference. */
    public static final String NODE = "org.pollex.app";
    /** Key of the preference; its value is one of {@link #key()}. */
    public static final String KEY = "appearance";

    private static final String LIGHT_THEME = "org.eclipse.e4.ui.css.theme.e4_default";
    private static final String DARK_THEME = "org.eclipse.e4.ui.css.theme.e4_dark";

    private final String label;

    Appearance(String label) {
        this.label = label;
    }

    /** As the user reads it, with its letter. */
    public String label() {
        return label;
    }

    /** As it is kept. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What the user chose. */
    public static Appearance chosen() {
        return of(InstanceScope.INSTANCE.getNode(NODE).get(KEY, SYSTEM.key()));
    }

    /** What a word means; {@link #SYSTEM} where it means nothing. */
    public static Appearance of(String word) {
        for (Appearance each : values()) {
            if (each.key().equals(word)) {
                return each;
            }
        }
        return SYSTEM;
    }

    /** Keeps this choice and shows it. */
    public void choose() {
        InstanceScope.INSTANCE.getNode(NODE).put(KEY, key());
        show();
    }

    /** What the first window shows: what was asked for at the start, or else what the user chose. */
    public static void showFirst() {
        String asked = System.getProperty(PROPERTY, "");
        (asked.isEmpty() ? chosen() : of(asked)).show();
    }

    /** Whether the window is dark now. */
    public static boolean dark() {
        ITheme theme = engine().getActiveTheme();
        return theme != null && theme.getId().startsWith(DARK_THEME);
    }

    private void show() {
        boolean dark = this == DARK || this == SYSTEM && Display.isSystemDarkTheme();
        frame(dark);
        if (engine().getActiveTheme() == null || dark() != dark) {
            // not kept by the platform: this class keeps the choice, "as the desktop" included
            engine().setTheme(dark ? DARK_THEME : LIGHT_THEME, false);
        }
    }

    /** Style sheets do not reach what the desktop draws: menus, scroll bars. */
    private static void frame(boolean dark) {
        String[][] ways = {{"org.eclipse.swt.internal.gtk.OS", "setDarkThemePreferred"},
            {"org.eclipse.swt.internal.win32.OS", "setTheme"}};
        for (String[] way : ways) {
            try {
                Method method = Class.forName(way[0]).getMethod(way[1], boolean.class);
                method.invoke(null, dark);
            } catch (ClassNotFoundException e) {
                // another desktop
            } catch (ReflectiveOperationException e) {
                ILog.of(Appearance.class).warn("Menus keep the colours of the desktop", e);
            }
        }
    }

    private static IThemeEngine engine() {
        return PlatformUI.getWorkbench().getService(IThemeEngine.class);
    }
}
