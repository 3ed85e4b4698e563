/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.gate;

import org.pollex.artwork.ArtException;
import org.xml.sax.SAXException;

/** Carries a refusal out of the parser. */
final class RefusedInParse extends SAXException {

    private static final long serialVersionUID = 1L;

    private final transient ArtException refusal;

    RefusedInParse(ArtException refusal) {
        super(refusal.getMessage());
        this.refusal = refusal;
    }

    ArtException refusal() {
        return refusal;
    }
}
