/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.jar.Manifest;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads declarations from every {@code plugin.xml} on a class path, where no platform runs; the contributor is the
 * symbolic name in the manifest beside it. So the files which the platform reads stay the only declaration. Looks at
 * elements directly below an extension; those deeper, conditions and translated texts are not read.
 */
final class ClassPathDeclarations {

    private final ClassLoader loader;
    private final List<Declaration> found = new ArrayList<>();
    private final Set<String> bundles = new HashSet<>();

    private ClassPathDeclarations(ClassLoader loader) {
        this.loader = loader;
    }

    static List<Declaration> read(ClassLoader loader, Contributions.Collector problems) {
        ClassPathDeclarations reader = new ClassPathDeclarations(loader);
        try {
            for (URL file : Collections.list(loader.getResources("plugin.xml"))) {
                try {
                    reader.file(file);
                } catch (IOException | XMLStreamException e) {
                    problems.problem(file.toString(), "it cannot be read ("
                            + String.valueOf(e.getMessage()).replaceAll("\\s+", " ") + "); mend the file");
                }
            }
        } catch (IOException e) {
            problems.problem("the class path", "it cannot be searched (" + e.getMessage() + "); check its entries");
        }
        return reader.found;
    }

    private void file(URL file) throws IOException, XMLStreamException {
        URL root = new URL(file, ".");
        String name;
        try (InputStream in = new URL(root, "META-INF/MANIFEST.MF").openStream()) {
            name = new Manifest(in).getMainAttributes().getValue("Bundle-SymbolicName");
        }
        if (name == null) {
            return;
        }
        String bundle = name.split(";")[0].strip();
        if (bundles.add(bundle)) {
            try (InputStream in = file.openStream()) {
                elements(in, bundle, root);
            }
        }
    }

    private void elements(InputStream in, String bundle, URL root) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        XMLStreamReader xml = factory.createXMLStreamReader(in);
        int depth = 0;
        String point = "";
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                depth++;
                if (depth == 2) {
                    String named = xml.getAttributeValue(null, "point");
                    point = xml.getLocalName().equals("extension") && named != null ? named : "";
                } else if (depth == 3 && !point.isEmpty()) {
                    found.add(declaration(xml, point, bundle, root));
                }
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
            }
        }
    }

    private Declaration declaration(XMLStreamReader xml, String point, String bundle, URL root) {
        Map<String, String> attributes = new HashMap<>();
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            attributes.put(xml.getAttributeLocalName(i), xml.getAttributeValue(i));
        }
        String type = attributes.getOrDefault("class", "");
        return new Declaration(point, bundle, xml.getLocalName(), attributes, new Declaration.Source() {
            @Override
            public Object make() throws Exception {
                return Class.forName(type, true, loader).getDeclaredConstructor().newInstance();
            }

            @Override
            public InputStream open(String path) throws IOException {
                return new URL(root, path).openStream();
            }
        });
    }
}
