/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;

/**
 * One element of an extension, wherever it was read from.
 *
 * @param point        id of the extension point
 * @param contributor  name of the bundle
 * @param element      name of the element
 * @param attributes   its attributes
 * @param source       makes its class and opens its files
 */
record Declaration(String point, String contributor, String element, Map<String, String> attributes, Source source) {

    /** How the contributing bundle is reached. */
    interface Source {

        /** Makes an instance of the class that the attribute {@code class} names. */
        Object make() throws Exception;

        /** Opens a file of the bundle. */
        InputStream open(String path) throws IOException;
    }

    Declaration {
        attributes = Map.copyOf(attributes);
    }

    /** An attribute that has to be there. */
    String need(String attribute) {
        String value = attributes.get(attribute);
        if (value == null || value.isBlank()) {
            throw new IllegalArgumentException("element <" + element + "> lacks the attribute " + attribute
                    + "; add it to plugin.xml");
        }
        return value;
    }

    /** An instance of the class it names. */
    <T> T make(Class<T> wanted) {
        String type = need("class");
        Object made;
        try {
            made = source.make();
        } catch (Exception | LinkageError e) {
            throw new IllegalStateException("class " + type + " cannot be made", e);
        }
        if (!wanted.isInstance(made)) {
            throw new IllegalStateException("class " + type + " is no " + wanted.getSimpleName());
        }
        return wanted.cast(made);
    }
}
