/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.markers;

import org.pollex.rules.Suite;

/**
 * What is installed, made once for the running program when it is first asked for. Immutable but for caches, and safe
 * for threads; the first call reads all catalogues and should not be made in the window's thread.
 */
public final class StudioSuite {

    private StudioSuite() {
    }

    /** Catalogues, checks and readers of the running program. */
    public static Suite get() {
        return Holder.SUITE;
    }

    private static final class Holder {
        static final Suite SUITE = Suite.installed();
    }
}
