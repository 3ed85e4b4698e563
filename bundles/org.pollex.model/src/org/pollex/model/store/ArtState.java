/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.nio.file.Path;

/** How the art of a placement was found. */
public sealed interface ArtState {

    /**
     * It is there, and it is what was placed.
     *
     * @param file  where it is
     */
    record Present(Path file) implements ArtState {
    }

    /**
     * It is there, but its content is not what was placed.
     *
     * @param file    where it is
     * @param sha256  of what is there now
     * @param message one sentence with the cure
     */
    record Changed(Path file, String sha256, String message) implements ArtState {
    }

    /**
     * There is no such file, or it cannot be read.
     *
     * @param message one sentence with the cure
     */
    record Missing(String message) implements ArtState {
    }

    /**
     * The design names a place outside its own folder, which is never read.
     *
     * @param message one sentence with the cure
     */
    record Refused(String message) implements ArtState {
    }
}
