/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** The name under which this user waives and signs. */
public final class Person {

    /** Node of the preferences. */
    public static final String NODE = "org.pollex.ui";
    /** Key of the name. */
    public static final String NAME = "name";

    private Person() {
    }

    /** The name; at first that of the account on this machine. */
    public static String name() {
        return InstanceScope.INSTANCE.getNode(NODE).get(NAME, System.getProperty("user.name", ""));
    }

    /** Keeps the name for next time. */
    public static void rename(String name) {
        InstanceScope.INSTANCE.getNode(NODE).put(NAME, name.strip());
        try {
            InstanceScope.INSTANCE.getNode(NODE).flush();
        } catch (BackingStoreException e) {
            org.eclipse.core.runtime.ILog.of(Person.class).warn("The name could not be kept", e);
        }
    }
}
