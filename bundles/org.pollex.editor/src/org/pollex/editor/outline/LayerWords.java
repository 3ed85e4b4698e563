/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.outline;

import java.util.ArrayList;
import java.util.List;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.ShapeKind;
import org.pollex.model.design.Side;
import org.pollex.model.design.TextLine;
import org.pollex.model.design.UnknownMark;

/** How is a line of the tree called, and what is said about it? */
final class LayerWords {

    private LayerWords() {
    }

    /** The name, or what it is when it has none. */
    static String name(Object element) {
        if (element instanceof Face face) {
            return face.name().isEmpty() ? "Side" : Character.toUpperCase(face.name().charAt(0))
                    + face.name().substring(1);
        }
        if (element instanceof Layer layer) {
            return named(layer.getName()) ? layer.getName() : layer.eContainer() instanceof Side side
                    ? "Layer " + (side.getLayers().indexOf(layer) + 1) : "Layer";
        }
        return element instanceof Mark mark ? named(mark.getName()) ? mark.getName() : kind(mark) : "";
    }

    private static boolean named(String name) {
        return name != null && !name.isBlank();
    }

    private static String kind(Mark mark) {
        if (mark instanceof TextLine line) {
            return named(line.getText()) ? "\u201C" + line.getText() + "\u201D" : "Text";
        }
        if (mark instanceof PlainShape shape) {
            return shape.getKind() == ShapeKind.ELLIPSE ? "Ellipse" : "Rectangle";
        }
        if (mark instanceof UnknownMark unknown) {
            return unknown.getKind();
        }
        return mark instanceof Placement ? "Art" : "Mark";
    }

    /** The name with what is special about it, so that its state is not told by pictures alone. */
    static String line(Object element) {
        List<String> state = state(element);
        return state.isEmpty() ? name(element) : name(element) + " \u2013 " + String.join(", ", state);
    }

    /** One line about an element for the status line and tool tips. */
    static String about(Object element) {
        if (element instanceof Face face) {
            return "Side: " + name(face);
        }
        String kind = element instanceof Layer layer ? "Layer of " + layer.getMarks().size()
                + (layer.getMarks().size() == 1 ? " mark" : " marks") : "Mark";
        return kind + ": " + line(element);
    }

    private static List<String> state(Object element) {
        List<String> state = new ArrayList<>();
        if (hidden(element)) {
            state.add("hidden");
        }
        if (locked(element)) {
            state.add("locked");
        }
        return state;
    }

    /** Whether the element itself is hidden. */
    static boolean hidden(Object element) {
        return element instanceof Layer layer && layer.isHidden() || element instanceof Mark mark && mark.isHidden();
    }

    /** Whether the element itself is locked. */
    static boolean locked(Object element) {
        return element instanceof Layer layer && layer.isLocked() || element instanceof Mark mark && mark.isLocked();
    }
}
