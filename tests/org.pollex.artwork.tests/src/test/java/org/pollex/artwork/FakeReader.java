/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** A reader for tests: takes what starts with its mark. */
public class FakeReader implements ArtReader {

    private final String mark;
    private final boolean beyond;

    /** The reader that an extension makes. */
    public FakeReader() {
        this("FAKE", false);
    }

    FakeReader(String mark, boolean beyond) {
        this.mark = mark;
        this.beyond = beyond;
    }

    @Override
    public boolean recognises(ArtSource source) {
        return new String(source.bytes(), StandardCharsets.ISO_8859_1).startsWith(mark);
    }

    @Override
    public Art read(ArtSource source, ReadLimits limits) throws ArtException {
        if (beyond) {
            throw new BeyondReaderException(source.name(), "swirls");
        }
        return new Art(mark, 1, 1, false, List.of(), List.of(), List.of());
    }
}
