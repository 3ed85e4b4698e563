/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.gate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An SVG element after the gate: local name, attributes and children. Only elements of the SVG namespace occur.
 * Attributes are keyed by local name, those of the XML namespace by {@code xml:} and the name; the XLink reference is
 * {@code href}, whichever way the file wrote it. Children are elements and text.
 */
public final class SvgNode {

    private final String name;
    private final Map<String, String> attributes = new LinkedHashMap<>();
    private final List<Object> children = new ArrayList<>();
    private final SvgNode parent;
    private final int position;

    /**
     * @param parent    element that holds this one, itself not changed; none for the root
     * @param position  place among the elements of this name in the parent, from 1
     */
    SvgNode(String name, Optional<SvgNode> parent, int position) {
        this.name = name;
        this.parent = parent.orElse(null);
        this.position = position;
    }

    /** An empty element of another name with the attributes and the place of this one, in no tree yet. */
    public SvgNode emptyAs(String other) {
        SvgNode node = new SvgNode(other, Optional.ofNullable(parent), position);
        node.attributes.putAll(attributes);
        return node;
    }

    /** Local name. */
    public String name() {
        return name;
    }

    /** Attributes in the order of the file; may be changed. */
    public Map<String, String> attributes() {
        return attributes;
    }

    /** Value of an attribute, or an empty string. */
    public String attribute(String key) {
        return attributes.getOrDefault(key, "");
    }

    /** Elements ({@link SvgNode}) and text ({@link String}); may be changed. */
    public List<Object> children() {
        return children;
    }

    /** The children that are elements. */
    public List<SvgNode> elements() {
        List<SvgNode> elements = new ArrayList<>();
        for (Object child : children) {
            if (child instanceof SvgNode node) {
                elements.add(node);
            }
        }
        return elements;
    }

    /** The element that holds this one. */
    public Optional<SvgNode> parent() {
        return Optional.ofNullable(parent);
    }

    /** Text directly inside, without that of inner elements. */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (Object child : children) {
            if (child instanceof String s) {
                text.append(s);
            }
        }
        return text.toString();
    }

    /** This element and all inside, in the order of the file. */
    public List<SvgNode> all() {
        List<SvgNode> all = new ArrayList<>();
        collect(all);
        return all;
    }

    private void collect(List<SvgNode> all) {
        all.add(this);
        for (Object child : children) {
            if (child instanceof SvgNode node) {
                node.collect(all);
            }
        }
    }

    /** How messages call the element: its id, or names and positions below the root such as {@code g[2]/path[1]}. */
    public String where() {
        String id = attribute("id");
        if (!id.isEmpty()) {
            return id.length() > 60 ? id.substring(0, 60) : id;
        }
        if (parent == null) {
            return name;
        }
        String own = name + "[" + position + "]";
        if (parent.parent == null) {
            return own;
        }
        StringBuilder path = new StringBuilder(own);
        for (SvgNode up = parent; up.parent != null && path.length() < 120; up = up.parent) {
            path.insert(0, up.name + "[" + up.position + "]/");
        }
        return path.toString();
    }
}
