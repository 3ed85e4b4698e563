/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures.output;

import org.eclipse.core.runtime.IProgressMonitor;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.output.picture.MaterialPicture;
import org.pollex.output.picture.PictureOptions;
import org.pollex.output.picture.PngFile;

/** Writes the picture of the design on its material. */
public final class PictureHandler extends OutputHandler {

    private static final int DPI = 600;

    public PictureHandler() {
        super("picture", "png");
    }

    @Override
    protected byte[] make(DesignSession session, Known known, IProgressMonitor monitor) {
        return PngFile.bytes(MaterialPicture.of(known.printed(), PictureOptions.of(DPI)), DPI);
    }
}
