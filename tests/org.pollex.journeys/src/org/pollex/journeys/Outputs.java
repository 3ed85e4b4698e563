/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.pollex.editor.session.DesignSession;
import org.pollex.ui.pictures.output.Output;
import org.pollex.ui.pictures.output.OutputWork;
import org.pollex.ui.pictures.output.Source;

/** Has an output of an open design written, as the menu does once a file was chosen. */
final class Outputs {

    private Outputs() {
    }

    static byte[] write(Output output, DesignSession session, Path file) throws Exception {
        Files.createDirectories(file.getParent());
        new OutputWork(output, Map.of(new Source(session.file(), Optional.of(session.known().orElseThrow())), file),
                result -> { }).schedule();
        Window.until(output.words() + " is written", () -> Files.exists(file));
        return Files.readAllBytes(file);
    }
}
