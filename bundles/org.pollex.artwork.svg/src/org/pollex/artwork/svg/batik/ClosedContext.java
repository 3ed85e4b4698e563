/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.io.IOException;
import java.io.InputStream;

import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.DocumentLoader;
import org.apache.batik.bridge.UserAgent;
import org.w3c.dom.Document;

/** A static context that loads no document and runs no script. */
final class ClosedContext extends BridgeContext {

    /** Refuses every document. */
    private static final class NoLoader extends DocumentLoader {

        NoLoader(UserAgent agent) {
            super(agent);
        }

        @Override
        public Document checkCache(String uri) {
            return null;
        }

        @Override
        public Document loadDocument(String uri) throws IOException {
            throw new IOException("no other file is read");
        }

        @Override
        public Document loadDocument(String uri, InputStream in) throws IOException {
            throw new IOException("no other file is read");
        }
    }

    ClosedContext(UserAgent agent, MappedBuilder builder) {
        super(agent, new NoLoader(agent));
        setDynamicState(STATIC);
        setGVTBuilder(builder);
    }

    @Override
    public BridgeContext createBridgeContext(SVGOMDocument document) {
        throw new SecurityException("no other file is read");
    }
}
