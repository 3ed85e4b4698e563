/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.tree;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An element or a piece of text. Attribute names are local names; those of {@code xlink:href} and {@code xml:space}
 * keep their prefix, attributes of any other namespace are dropped by the reader.
 */
public final class Node {

    private static final String[] NONE = new String[0];

    private final String name;
    private final Node parent;
    private final int position;
    private final boolean svg;
    private final List<Node> children = new ArrayList<>(4);
    private String[] attributes = NONE;
    private String text = "";
    private int elements;

    private Node(String name, Node parent, int position, boolean svg) {
        this.name = name;
        this.parent = parent;
        this.position = position;
        this.svg = svg;
    }

    static Node element(String name, Node parent, boolean svg, String[] attributes) {
        Node node = new Node(name, parent, parent == null ? 1 : ++parent.elements, svg);
        node.attributes = attributes;
        if (parent != null) {
            parent.children.add(node);
        }
        return node;
    }

    static void text(String text, Node parent) {
        Node node = new Node("", parent, 0, false);
        node.text = text;
        parent.children.add(node);
    }

    /** Local name; empty for a piece of text. */
    public String name() {
        return name;
    }

    /** Whether this is an element of SVG. */
    public boolean isSvg() {
        return svg;
    }

    /** Whether this is a piece of text. */
    public boolean isText() {
        return name.isEmpty();
    }

    /** Characters of a piece of text; empty for an element. */
    public String text() {
        return text;
    }

    /** Element that holds this one. */
    public Optional<Node> parent() {
        return Optional.ofNullable(parent);
    }

    /** Elements and pieces of text inside, in order. */
    public List<Node> children() {
        return children;
    }

    /** Position among the elements of the parent, from 1. */
    public int position() {
        return position;
    }

    /** Number of elements directly inside. */
    public int elementCount() {
        return elements;
    }

    /** Number of attributes. */
    public int attributeCount() {
        return attributes.length / 2;
    }

    /** Name of an attribute by position. */
    public String attributeName(int i) {
        return attributes[2 * i];
    }

    /** Value of an attribute by position. */
    public String attributeValue(int i) {
        return attributes[2 * i + 1];
    }

    /** Value of an attribute, empty when it is not there. */
    public String attribute(String key) {
        for (int i = 0; i < attributes.length; i += 2) {
            if (attributes[i].equals(key)) {
                return attributes[i + 1];
            }
        }
        return "";
    }

    /** Whether the attribute is there. */
    public boolean has(String key) {
        for (int i = 0; i < attributes.length; i += 2) {
            if (attributes[i].equals(key)) {
                return true;
            }
        }
        return false;
    }

    /** Target of {@code href} or {@code xlink:href}, the plain one first; empty when there is none. */
    public String href() {
        return (has("href") ? attribute("href") : attribute("xlink:href")).strip();
    }

    /** All characters inside, at any depth. */
    public String allText() {
        if (isText()) {
            return text;
        }
        StringBuilder all = new StringBuilder();
        for (Node child : children) {
            all.append(child.allText());
        }
        return all.toString();
    }

    @Override
    public String toString() {
        String label = label();
        return label.length() <= 60 ? label : label.substring(0, 57) + "...";
    }

    /** The id, or names and positions from the root on such as {@code g[2]/path[1]}; the same on every reading. */
    public String label() {
        String id = attribute("id");
        if (!id.isEmpty() || parent == null) {
            return id.isEmpty() ? name : id;
        }
        StringBuilder path = new StringBuilder();
        for (Node n = this; n != null && n.parent != null; n = n.parent) {
            path.insert(0, (path.length() == 0 ? "" : "/")).insert(0, n.name + "[" + n.position + "]");
        }
        return path.toString();
    }
}
