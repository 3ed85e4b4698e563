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
 * A design, flattened: the one result that rules, pictures and plates share. Immutable but for what is worked out when
 * it is first asked for; safe for threads; the model objects it refers to must not be changed while it is in use.
 */
public final class Printed {

    private final Design design;
    private final Item item;
    private final Material material;
    private final Method method;
    private final List<Ink> inks;
    private final Optional<Ink> white;
    private final PressSettings settings;
    private final List<PrintedSide> sides;
    private final Underbase underbase;
    private final SeenPrint seen;

    /**
     * @param design    what it was made from
     * @param item      the product with its geometry
     * @param material  what the item is made of
     * @param method    how it is printed
     * @param inks      the inks of the design in printing order
     * @param white     the ink that a method with white below lays first; empty when no catalogue has a white
     * @param settings  numbers of the catalogues that decide how it prints
     * @param sides     printed sides, front first; a face without art has no entry
     */
    public Printed(Design design, Item item, Material material, Method method, List<Ink> inks, Optional<Ink> white,
            PressSettings settings, List<PrintedSide> sides) {
        this.design = design;
        this.item = item;
        this.material = material;
        this.method = method;
        this.inks = List.copyOf(inks);
        this.white = white;
        this.settings = settings;
        this.sides = List.copyOf(sides);
        underbase = new Underbase(this);
        seen = new SeenPrint(this);
    }

    /** One with the white that is among the inks, if there is one, and the usual settings. */
    public Printed(Design design, Item item, Material material, Method method, List<Ink> inks,
            List<PrintedSide> sides) {
        this(design, item, material, method, inks,
                inks.stream().filter(ink -> ink.getKind() == InkKind.WHITE).findFirst(),
                PressSettings.usual(method), sides);
    }

    /** The same design in other inks on another material, printed the same way. */
    public Printed with(Material other, List<Ink> otherInks, List<PrintedSide> otherSides) {
        return new Printed(design, item, other, method, otherInks, white, settings, otherSides);
    }

    /** What it was made from. */
    public Design design() {
        return design;
    }

    /** The product with its geometry. */
    public Item item() {
        return item;
    }

    /** What the item is made of. */
    public Material material() {
        return material;
    }

    /** How it is printed. */
    public Method method() {
        return method;
    }

    /** The inks of the design in printing order. */
    public List<Ink> inks() {
        return inks;
    }

    /** The ink that a method with white below lays first; empty when no catalogue has a white. */
    public Optional<Ink> white() {
        return white;
    }

    /** Numbers of the catalogues that decide how it prints. */
    public PressSettings settings() {
        return settings;
    }

    /** The printed sides, front first; a face without art has no entry. */
    public List<PrintedSide> sides() {
        return sides;
    }

    /** The side of that name, when something is printed on it. */
    public Optional<PrintedSide> side(String name) {
        return sides.stream().filter(side -> side.name().equals(name)).findFirst();
    }

    /** What of it is seen on each face. */
    public SeenPrint seen() {
        return seen;
    }

    /** The white below the colours. */
    public Underbase underbase() {
        return underbase;
    }
}
