/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Folders for files that are of use for a while only. */
public final class TemporaryFolder {

    private TemporaryFolder() {
    }

    /**
     * Makes a folder.
     *
     * @param name  what its name begins with
     */
    public static Path make(String name) throws Refusal {
        try {
            return Files.createTempDirectory(name);
        } catch (IOException e) {
            throw new Refusal(ExitCode.NOT_WRITTEN, "No folder for temporary files can be made ("
                    + SafeOutput.reason(e) + "); check the room on the disk.", e);
        }
    }

    /** Takes a folder away with all that is in it; what cannot go stays where the system clears up by itself. */
    public static void remove(Path folder) {
        List<Path> all;
        try (Stream<Path> inside = Files.walk(folder)) {
            all = inside.sorted(Comparator.reverseOrder()).toList();
        } catch (IOException e) {
            return;
        }
        all.forEach(SafeOutput::remove);
    }
}
