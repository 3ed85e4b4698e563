/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.conformance;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import javax.xml.parsers.DocumentBuilderFactory;

import org.pollex.artwork.ArtReader;
import org.pollex.artwork.ArtReaders;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The readers as the bundles contribute them, without OSGi: from the {@code plugin.xml} files on the class path. */
public final class ContributedReaders {

    private static ArtReaders readers;

    private ContributedReaders() {
    }

    /** All readers, shared by the tests of one run, since a reader may hold processes. */
    public static synchronized ArtReaders all() {
        if (readers == null) {
            readers = ArtReaders.of(load());
        }
        return readers;
    }

    private static List<ArtReaders.Entry> load() {
        List<ArtReaders.Entry> entries = new ArrayList<>();
        try {
            for (URL url : Collections.list(ContributedReaders.class.getClassLoader().getResources("plugin.xml"))) {
                try (InputStream in = url.openStream()) {
                    NodeList found = DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().parse(in)
                            .getElementsByTagName("reader");
                    for (int i = 0; i < found.getLength(); i++) {
                        Element e = (Element) found.item(i);
                        ArtReader reader = (ArtReader) Class.forName(e.getAttribute("class")).getConstructor()
                                .newInstance();
                        entries.add(new ArtReaders.Entry(e.getAttribute("id"), e.getAttribute("name"),
                                Integer.parseInt(e.getAttribute("priority")),
                                List.of(e.getAttribute("fileExtensions").split(",")), reader));
                    }
                }
            }
        } catch (IOException | ReflectiveOperationException | org.xml.sax.SAXException
                | javax.xml.parsers.ParserConfigurationException e) {
            throw new IllegalStateException("The contributed readers cannot be made.", e);
        }
        if (entries.isEmpty()) {
            throw new IllegalStateException("No plugin.xml on the class path contributes a reader.");
        }
        return entries;
    }
}
