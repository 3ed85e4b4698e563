/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.style;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pollex.artwork.svg.reader.syntax.Colour;
import org.pollex.artwork.svg.reader.syntax.Length;
import org.pollex.artwork.svg.reader.tree.Node;

/** The properties of one element. */
public final class Style {

    private final Object[] values;
    private Map<String, String> variables;
    private Map<String, String> geometry = Map.of();

    private Style(Object[] values, Map<String, String> variables) {
        this.values = values;
        this.variables = variables;
    }

    /** What holds outside of the root. */
    public static Style initial() {
        Property[] all = Property.all();
        Object[] values = new Object[all.length];
        for (int i = 0; i < all.length; i++) {
            values[i] = all[i].initial();
        }
        return new Style(values, Map.of());
    }

    /** A start for a child: inherited values kept, the others reset. */
    Style child() {
        Object[] copy = values.clone();
        for (Property p : Property.all()) {
            if (!p.inherited()) {
                copy[p.ordinal()] = p.initial();
            }
        }
        return new Style(copy, variables);
    }

    void set(Property property, Object value) {
        values[property.ordinal()] = value;
    }

    Object get(Property property) {
        return values[property.ordinal()];
    }

    Map<String, String> variables() {
        return variables;
    }

    void variables(Map<String, String> all) {
        variables = all;
    }

    void geometry(String name, String value) {
        if (geometry.isEmpty()) {
            geometry = new HashMap<>();
        }
        geometry.put(name, value);
    }

    /** Value of {@code fill} or {@code stroke}. */
    public PaintValue paint(Property property) {
        return (PaintValue) values[property.ordinal()];
    }

    /** Value of a property that is a number. */
    public double number(Property property) {
        return ((Number) values[property.ordinal()]).doubleValue();
    }

    /** Value of a property that is a word or text. */
    public String word(Property property) {
        return (String) values[property.ordinal()];
    }

    /** Value of a property that is a length. */
    public Length length(Property property) {
        return (Length) values[property.ordinal()];
    }

    /** Value of {@code stroke-dasharray}. */
    @SuppressWarnings("unchecked")
    public List<Length> dashes() {
        return (List<Length>) values[Property.STROKE_DASHARRAY.ordinal()];
    }

    /** Font size in user units. */
    public double fontSize() {
        return number(Property.FONT_SIZE);
    }

    /** The colour of a property that is one, {@code currentColor} resolved. */
    public Colour colour(Property property) {
        Object value = values[property.ordinal()];
        if (value instanceof PaintValue.Solid solid) {
            return solid.colour();
        }
        Object current = values[Property.COLOR.ordinal()];
        return current instanceof PaintValue.Solid solid ? solid.colour() : Colour.BLACK;
    }

    /** Whether the element and what is in it are painted at all. */
    public boolean displayed() {
        return !word(Property.DISPLAY).equals("none");
    }

    /** Whether the element itself shows. */
    public boolean visible() {
        return word(Property.VISIBILITY).equals("visible");
    }

    /** An attribute of size or place that a style sheet may override; empty when it is nowhere. */
    public String geometry(Node node, String name) {
        String own = geometry.get(name);
        return own != null ? own : node.attribute(name);
    }

    /** A length from such an attribute. */
    public Optional<Length> lengthOf(Node node, String name) {
        String text = geometry(node, name);
        return text.isEmpty() || text.equals("auto") ? Optional.empty() : Length.parse(text);
    }
}
