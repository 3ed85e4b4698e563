/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.setting;

import java.util.Set;
import org.eclipse.core.runtime.preferences.DefaultScope;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.IEclipsePreferences.IPreferenceChangeListener;
import org.eclipse.core.runtime.preferences.InstanceScope;

/** Where choices are kept. */
public final class Choices {

    /** Node of the preferences. */
    public static final String NODE = "org.pollex.editor";

    private Choices() {
    }

    private static IEclipsePreferences node() {
        return InstanceScope.INSTANCE.getNode(NODE);
    }

    static String get(String key, String usual) {
        return node().get(key, DefaultScope.INSTANCE.getNode(NODE).get(key, usual));
    }

    static void set(String key, String value) {
        node().put(key, value);
    }

    /**
     * Runs something after each change of one of some choices, in the thread that changes it.
     *
     * @return ends that
     */
    public static Runnable follow(Set<String> keys, Runnable changed) {
        IPreferenceChangeListener heard = event -> {
            if (keys.contains(event.getKey())) {
                changed.run();
            }
        };
        node().addPreferenceChangeListener(heard);
        return () -> node().removePreferenceChangeListener(heard);
    }
}
