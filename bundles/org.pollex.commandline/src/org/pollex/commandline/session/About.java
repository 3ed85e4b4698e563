/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.session;

/** Which version of the suite this is. */
public final class About {

    /** The version of the bundle, without its build qualifier. */
    public static final String VERSION = "0.1.0";

    private About() {
    }
}
