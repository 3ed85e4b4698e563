/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

/**
 * Reads one kind of art file. Implementations are stateless, keep to the limits, read nothing but the bytes they are
 * given and run nothing that the file holds.
 */
public interface ArtReader {

    /** Whether the bytes look like a file of this reader, whatever its name ends with. */
    boolean recognises(ArtSource source);

    /**
     * Reads the art.
     *
     * @throws BeyondReaderException  when another reader may know what this one does not
     * @throws ArtException           when the file is refused, damaged or too heavy
     */
    Art read(ArtSource source, ReadLimits limits) throws ArtException;
}
