/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.core.filesystem.EFS;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.ide.IDE;

/** Opens the designs named when the workbench was started; a name that is no file is told in the log and left out. */
final class OpenFiles {

    private OpenFiles() {
    }

    /** Opens each word that ends in {@code .design}, in order. */
    static void open(IWorkbenchPage page, List<String> words) {
        for (String word : words) {
            if (!word.endsWith(".design")) {
                continue;
            }
            Path file = Path.of(word).toAbsolutePath();
            if (!Files.isRegularFile(file)) {
                ILog.of(OpenFiles.class).warn("There is no file " + file);
                continue;
            }
            try {
                IDE.openEditorOnFileStore(page, EFS.getStore(file.toUri()));
            } catch (CoreException e) {
                ILog.of(OpenFiles.class).error("The design could not be opened: " + file, e);
            }
        }
    }
}
