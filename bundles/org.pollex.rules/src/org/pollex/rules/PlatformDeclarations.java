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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;

/** Reads declarations from the registry of a running platform. */
final class PlatformDeclarations {

    private PlatformDeclarations() {
    }

    static List<Declaration> of(IExtensionRegistry registry, String point) {
        List<Declaration> found = new ArrayList<>();
        for (IConfigurationElement element : registry.getConfigurationElementsFor(point)) {
            Map<String, String> attributes = new HashMap<>();
            for (String name : element.getAttributeNames()) {
                attributes.put(name, element.getAttribute(name));
            }
            String bundle = element.getContributor().getName();
            found.add(new Declaration(point, bundle, element.getName(), attributes, new Declaration.Source() {
                @Override
                public Object make() throws Exception {
                    return element.createExecutableExtension("class");
                }

                @Override
                public InputStream open(String path) throws IOException {
                    return new URL("platform:/plugin/" + bundle + "/" + path).openStream();
                }
            }));
        }
        return found;
    }
}
