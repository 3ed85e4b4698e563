/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Tells whether errors go to a person at a terminal. */
final class Terminal {

    private static final Path ERRORS = Path.of("/proc/self/fd/2");

    private Terminal() {
    }

    /** On Linux where the error stream leads; elsewhere whether the program has a console at all. */
    static boolean takesErrors() {
        try {
            if (Files.isSymbolicLink(ERRORS)) {
                String where = Files.readSymbolicLink(ERRORS).toString();
                return where.startsWith("/dev/pts/") || where.startsWith("/dev/tty");
            }
        } catch (IOException | SecurityException e) {
            return false;
        }
        return System.console() != null;
    }
}
