/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.side;

import java.util.function.BiConsumer;
import org.eclipse.core.runtime.preferences.DefaultScope;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.IEclipsePreferences.IPreferenceChangeListener;
import org.eclipse.core.runtime.preferences.InstanceScope;

/** What every drawing shows besides the art, as the user wishes it; kept as preferences. */
public enum Shown {
    /** Rulers along the edges. */
    RULERS("show.rulers", true),
    /** Grid in mm. */
    GRID("show.grid", false),
    /** Guides. */
    GUIDES("show.guides", true),
    /** Outline of the safe zone. */
    SAFE("show.safe", true),
    /** Zone that wears. */
    WEAR("show.wear", true),
    /** Rim that does not print. */
    RIM("show.unprintable", true),
    /** Findings while art is moved, scaled or turned. */
    LIVE("show.live", true);

    /** Node of the preferences. */
    public static final String NODE = "org.pollex.editor";

    private final String key;
    private final boolean usual;

    Shown(String key, boolean usual) {
        this.key = key;
        this.usual = usual;
    }

    private static IEclipsePreferences node() {
        return InstanceScope.INSTANCE.getNode(NODE);
    }

    /** Key of the preference. */
    public String key() {
        return key;
    }

    /** Whether it shows where nobody chose. */
    public boolean usual() {
        return usual;
    }

    /** Whether it shows. */
    public boolean on() {
        return node().getBoolean(key, DefaultScope.INSTANCE.getNode(NODE).getBoolean(key, usual));
    }

    /** Shows or hides it in all drawings. */
    public void set(boolean on) {
        node().putBoolean(key, on);
    }

    /**
     * Tells what shows, now and at each change, in the thread that changes it.
     *
     * @return ends the telling
     */
    public static Runnable follow(BiConsumer<Shown, Boolean> listener) {
        IPreferenceChangeListener heard = event -> {
            for (Shown each : values()) {
                if (each.key.equals(event.getKey())) {
                    listener.accept(each, each.on());
                }
            }
        };
        node().addPreferenceChangeListener(heard);
        for (Shown each : values()) {
            listener.accept(each, each.on());
        }
        return () -> node().removePreferenceChangeListener(heard);
    }
}
