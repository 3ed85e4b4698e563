/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.style;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.svg.reader.css.Declaration;
import org.pollex.artwork.svg.reader.css.StyleSheet;
import org.pollex.artwork.svg.reader.limits.Budget;
import org.pollex.artwork.svg.reader.report.Notices;
import org.pollex.artwork.svg.reader.syntax.PathData;
import org.pollex.artwork.svg.reader.tree.Node;

/**
 * Works out the style of an element: attributes, then the style sheet by specificity, then the style attribute, then
 * what is important in the last two (CSS Cascade 4, for one author).
 */
public final class Cascade {

    private static final Set<String> GEOMETRY = Set.of("x", "y", "cx", "cy", "r", "rx", "ry", "width", "height", "d");

    private final StyleSheet sheet;
    private final Notices notices;
    private final Budget budget;

    /** A cascade over one sheet. */
    public Cascade(StyleSheet sheet, Notices notices, Budget budget) {
        this.sheet = sheet;
        this.notices = notices;
        this.budget = budget;
    }

    /** Style of an element below one that has the parent style. */
    public Style style(Node node, Style parent) throws ArtException {
        Style style = parent.child();
        String inline = node.attribute("style");
        if (sheet.isEmpty() && inline.isEmpty()) {
            attributes(node, style, parent, true);
            attributes(node, style, parent, false);
            return style;
        }
        List<Declaration> all = new ArrayList<>();
        List<Declaration> late = new ArrayList<>();
        if (!sheet.isEmpty()) {
            split(sheet.declarations(node, budget), all, late);
        }
        List<Declaration> own = new ArrayList<>();
        if (!inline.isEmpty()) {
            split(Declaration.list(inline), all, own);
        }
        all.addAll(late);
        all.addAll(own);
        variables(all, style);
        attributes(node, style, parent, true);
        for (Declaration d : all) {
            if (isFirst(d.name())) {
                apply(d, node, style, parent);
            }
        }
        attributes(node, style, parent, false);
        for (Declaration d : all) {
            if (!isFirst(d.name())) {
                apply(d, node, style, parent);
            }
        }
        return style;
    }

    private static void split(List<Declaration> from, List<Declaration> normal, List<Declaration> important) {
        for (Declaration d : from) {
            (d.important() ? important : normal).add(d);
        }
    }

    /** The font size comes first: other values may be counted in it. */
    private static boolean isFirst(String name) {
        return name.equals("font-size") || name.equals("font");
    }

    private static void variables(List<Declaration> all, Style style) {
        Map<String, String> own = null;
        for (Declaration d : all) {
            if (d.name().startsWith("--")) {
                own = own == null ? new HashMap<>(style.variables()) : own;
                own.put(d.name(), d.value());
            }
        }
        if (own != null) {
            style.variables(own);
        }
    }

    private void attributes(Node node, Style style, Style parent, boolean first) {
        for (int i = 0; i < node.attributeCount(); i++) {
            String name = node.attributeName(i);
            Property property = Property.find(name);
            if (property == null && first && name.startsWith("on") && name.length() > 4) {
                notices.refused(name, node.label(), "a script is not run; if it draws something, draw that as paths");
            }
            if (property == null || first != (property == Property.FONT_SIZE)) {
                continue;
            }
            String value = node.attributeValue(i);
            if (value.contains("var(")) {
                value = Variables.fill(value, style.variables());
            }
            if (value != null) {
                set(property, name, value, node, style, parent);
            }
        }
    }

    private void apply(Declaration d, Node node, Style style, Style parent) {
        String name = d.name();
        if (name.startsWith("--")) {
            return;
        }
        String value = d.value();
        if (value.contains("var(")) {
            value = Variables.fill(value, style.variables());
            if (value == null) {
                return;
            }
        }
        Property property = Property.find(name);
        if (property != null) {
            set(property, name, value, node, style, parent);
        } else if (name.equals("marker")) {
            set(Property.MARKER_START, name, value, node, style, parent);
            set(Property.MARKER_MID, name, value, node, style, parent);
            set(Property.MARKER_END, name, value, node, style, parent);
        } else if (name.equals("font")) {
            FontShorthand.apply(value, style, parent);
        } else if (GEOMETRY.contains(name)) {
            geometry(name, value, style);
        } else {
            Unread.report(name, value, node, notices);
        }
    }

    private static void geometry(String name, String value, Style style) {
        String text = value;
        if (name.equals("d")) {
            if (!value.startsWith("path(") || value.length() < 8) {
                return;
            }
            text = value.substring(6, value.length() - 2);
            if (PathData.parse(text).error() >= 0) {
                return;
            }
        }
        style.geometry(name, text);
    }

    private void set(Property property, String name, String text, Node node, Style style, Style parent) {
        String word = text.strip();
        Object value;
        switch (word) {
            case "inherit" -> value = parent.get(property);
            case "initial" -> value = property.initial();
            case "unset", "revert", "revert-layer" -> value = property.inherited() ? parent.get(property)
                    : property.initial();
            default -> {
                if (property == Property.FONT_SIZE) {
                    value = FontSizes.parse(word, parent.fontSize());
                } else {
                    value = property.parse(word);
                }
                if (value == null && word.indexOf('(') > 0) {
                    notices.unsupported(name, node.label(), "the value \"" + Notices.cut(word) + "\" of " + name
                            + " is not known and is passed over; write it plainly");
                }
            }
        }
        if (value != null) {
            style.set(property, value);
        }
    }
}
