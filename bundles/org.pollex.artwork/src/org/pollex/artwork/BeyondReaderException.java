/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

/** The art is sound but holds something that this reader leaves to another one. */
public final class BeyondReaderException extends ArtException {

    private static final long serialVersionUID = 1L;

    private final String feature;

    /**
     * @param name     file as the user wrote it
     * @param feature  what the reader does not know, in the file's own words
     */
    public BeyondReaderException(String name, String feature) {
        super(name, "no reader knows " + feature + "; convert it to plain paths and export the art again");
        this.feature = feature;
    }

    /** What the reader does not know. */
    public String feature() {
        return feature;
    }
}
