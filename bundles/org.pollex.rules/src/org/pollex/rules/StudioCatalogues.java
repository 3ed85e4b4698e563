/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Finds the catalogues that a studio keeps beside a design or in a folder above it. */
final class StudioCatalogues {

    private StudioCatalogues() {
    }

    /** Catalogue files seen from a folder, the farthest first, those of one folder by name. */
    static List<Path> above(Path folder) {
        List<Path> found = new ArrayList<>();
        for (Path at = folder.toAbsolutePath().normalize(); at != null; at = at.getParent()) {
            List<Path> here = new ArrayList<>();
            try (DirectoryStream<Path> files = Files.newDirectoryStream(at, "*.catalogue")) {
                for (Path file : files) {
                    // A dot in front marks what saving keeps beside a file.
                    if (!file.getFileName().toString().startsWith(".") && Files.isRegularFile(file)) {
                        here.add(file);
                    }
                }
            } catch (IOException e) {
                // A folder that may not be listed has no catalogue for this user.
                continue;
            }
            here.sort(Collections.reverseOrder());
            found.addAll(here);
        }
        Collections.reverse(found);
        return found;
    }

    /** Changes when one of the files does. */
    static String stamp(List<Path> files) {
        StringBuilder stamp = new StringBuilder();
        for (Path file : files) {
            stamp.append(file).append('|');
            try {
                stamp.append(Files.getLastModifiedTime(file).toMillis()).append('|').append(Files.size(file));
            } catch (IOException e) {
                stamp.append("unreadable");
            }
            stamp.append('\n');
        }
        return stamp.toString();
    }
}
