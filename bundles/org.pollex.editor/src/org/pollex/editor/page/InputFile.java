/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IURIEditorInput;
import org.eclipse.ui.PartInitException;

/** The file on disk behind what an editor was asked to open. */
public final class InputFile {

    private InputFile() {
    }

    /** The same where an editor cannot do without. */
    public static Path required(IEditorInput input) throws PartInitException {
        return of(input).orElseThrow(() -> new PartInitException(input.getName() + " is not a file on disk."));
    }

    /** The file; empty when the input is none of the disk. */
    public static Optional<Path> of(IEditorInput input) {
        IFile resource = input.getAdapter(IFile.class);
        if (resource != null && resource.getLocation() != null) {
            return Optional.of(resource.getLocation().toPath());
        }
        if (input instanceof IURIEditorInput uri && "file".equals(uri.getURI().getScheme())) {
            return Optional.of(Path.of(uri.getURI()));
        }
        return Optional.empty();
    }
}
