/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.util.Objects;
import org.eclipse.emf.common.util.EList;

/** Adds to, takes from, or moves between containment lists: one element, from a place to a place. */
abstract class ListCommand<T> extends ModelCommand {

    private final T element;
    private final EList<T> from;
    private final EList<T> to;
    private final int toIndex;
    private int fromIndex = -1;

    /**
     * @param from     list that holds the element now, or null when it is new
     * @param to       list that will hold it, or null when it goes
     * @param toIndex  place in {@code to} after the element left {@code from}
     */
    ListCommand(String label, T element, EList<T> from, EList<T> to, int toIndex) {
        super(label);
        this.element = Objects.requireNonNull(element);
        this.from = from;
        this.to = to;
        int most = to == null ? 0 : to.size() - (to == from ? 1 : 0);
        if (to != null && (toIndex < 0 || toIndex > most)) {
            throw new IllegalArgumentException("There is no place " + toIndex + " among " + most + ".");
        }
        this.toIndex = toIndex;
    }

    @Override
    protected final void keep() {
        fromIndex = from == null ? -1 : from.indexOf(element);
        if (from != null && fromIndex < 0) {
            throw new IllegalStateException("The element is no longer where the command expects it.");
        }
    }

    @Override
    public final void redo() {
        if (from != null && from == to) {
            to.move(toIndex, element);
            return;
        }
        if (from != null) {
            from.remove(fromIndex);
        }
        if (to != null) {
            to.add(toIndex, element);
        }
    }

    @Override
    public final void undo() {
        if (from != null && from == to) {
            from.move(fromIndex, element);
            return;
        }
        if (to != null) {
            to.remove(toIndex);
        }
        if (from != null) {
            from.add(fromIndex, element);
        }
    }
}
