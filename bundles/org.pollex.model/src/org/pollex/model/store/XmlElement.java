/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An element of a model file between XML and EMF, where migrations rewrite it. It knows its line, so that whatever is
 * found wrong later can still say where. Attributes outside the empty namespace have keys of the form {uri}name, and
 * the value of xsi:type is resolved to the same form.
 */
final class XmlElement {

    private final String namespace;
    private final String name;
    private final int line;
    private final Map<String, String> attributes = new LinkedHashMap<>();
    private final List<XmlElement> children = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();

    XmlElement(String namespace, String name, int line) {
        this.namespace = namespace;
        this.name = name;
        this.line = line;
    }

    String namespace() {
        return namespace;
    }

    String name() {
        return name;
    }

    int line() {
        return line;
    }

    Map<String, String> attributes() {
        return attributes;
    }

    List<XmlElement> children() {
        return children;
    }

    /** The children of that name, in order. */
    List<XmlElement> children(String childName) {
        return children.stream().filter(child -> child.name.equals(childName)).toList();
    }

    /** Text directly inside the element. */
    String text() {
        return text.toString();
    }

    void append(char[] characters, int start, int length) {
        text.append(characters, start, length);
    }

    void append(String more) {
        text.append(more);
    }
}
