/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;

/** Keeps the details of a fault of the program where they can be sent on, out of the user's sight. */
final class Faults {

    private Faults() {
    }

    /** A few words about the fault. */
    static String told(Throwable fault) {
        return fault.getClass().getSimpleName() + (fault.getMessage() == null ? "" : ": " + fault.getMessage());
    }

    /** Writes the details to a file of the system's temporary folder; returns its path, or why there is none. */
    static String log(Throwable fault) {
        StringWriter details = new StringWriter();
        fault.printStackTrace(new PrintWriter(details, true));
        try {
            Path file = Files.createTempFile("pollex-fault-", ".log");
            return Files.writeString(file, details.toString()).toString();
        } catch (IOException e) {
            return "none, since the temporary folder cannot be written";
        }
    }
}
