/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.wizard;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

/** Art as files: told by their ending, chosen in the system's dialog. */
public final class SvgFiles {

    private SvgFiles() {
    }

    /** Whether a file's name says that it is art. */
    public static boolean is(Path file) {
        return file.getFileName() != null && file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".svg");
    }

    /** Asks for files; none when the user thinks better of it. */
    static List<Path> ask(Shell shell, boolean many) {
        FileDialog dialog = new FileDialog(shell, SWT.OPEN | (many ? SWT.MULTI : 0));
        dialog.setText("Choose art");
        dialog.setFilterNames(new String[] {"SVG files", "All files"});
        dialog.setFilterExtensions(new String[] {"*.svg;*.SVG", "*.*"});
        if (dialog.open() == null) {
            return List.of();
        }
        return Arrays.stream(dialog.getFileNames()).map(name -> Path.of(dialog.getFilterPath(), name)).toList();
    }
}
