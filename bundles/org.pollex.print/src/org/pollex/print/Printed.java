/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.List;
import java.util.Optional;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.model.design.Design;
import org.pollex.print.item.Item;

/**
 * A design, flattened: the one result that rules, pictures and plates share. Immutable; the model objects it refers to
 * must not be changed while it is in use.
 *
 * @param design    what it was made from
 * @param item      the product with its geometry
 * @param material  what the item is made of
 * @param method    how it is printed
 * @param inks      the inks of the design in printing order
 * @param white     the ink that a method with white below lays first; empty when no catalogue has a white
 * @param sides     printed sides, front first; a face without art has no entry
 */
public record Printed(Design design, Item item, Material material, Method method, List<Ink> inks,
        Optional<Ink> white, List<PrintedSide> sides) {

    public Printed {
        inks = List.copyOf(inks);
        sides = List.copyOf(sides);
    }

    /** The same with the white that is among the inks, if there is one. */
    public Printed(Design design, Item item, Material material, Method method, List<Ink> inks,
            List<PrintedSide> sides) {
        this(design, item, material, method, inks,
                inks.stream().filter(ink -> ink.getKind() == InkKind.WHITE).findFirst(), sides);
    }

    /** The side of that name, when something is printed on it. */
    public Optional<PrintedSide> side(String name) {
        return sides.stream().filter(side -> side.name().equals(name)).findFirst();
    }
}
