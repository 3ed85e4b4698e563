/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.Entry;
import org.pollex.model.catalogue.Family;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.model.catalogue.Product;
import org.pollex.model.catalogue.Setting;
import org.pollex.model.design.Design;

/**
 * Several catalogues seen as one: the built-in ones first, a studio's own over them. An entry of a later catalogue
 * takes the place of the earlier one with its id; a new id is added at the end. Ids of products, materials, inks,
 * methods and families are apart: an ink may have the id of a material.
 *
 * <p>Lists and look-ups are fixed when the view is made; the entries themselves are shared, not copied, and must not be
 * edited while others read. An id that a model has not set (null) is looked up as an unknown one.
 */
public final class Catalogues {

    private final List<Catalogue> layers;
    private final Map<String, Family> families;
    private final Map<String, Product> products;
    private final Map<String, Material> materials;
    private final Map<String, Ink> inks;
    private final Map<String, Method> methods;

    private Catalogues(List<Catalogue> layers) {
        this.layers = List.copyOf(layers);
        this.families = merged(Catalogue::getFamilies);
        this.products = merged(Catalogue::getProducts);
        this.materials = merged(Catalogue::getMaterials);
        this.inks = merged(Catalogue::getInks);
        this.methods = merged(Catalogue::getMethods);
    }

    /** A view over these catalogues, later ones over earlier ones. */
    public static Catalogues of(List<Catalogue> catalogues) {
        return new Catalogues(catalogues);
    }

    /** A view over these catalogues, later ones over earlier ones. */
    public static Catalogues of(Catalogue... catalogues) {
        return new Catalogues(List.of(catalogues));
    }

    /** A view with one more catalogue over all of this. */
    public Catalogues with(Catalogue over) {
        List<Catalogue> all = new ArrayList<>(layers);
        all.add(over);
        return new Catalogues(all);
    }

    /** The catalogues seen, lowest first. */
    public List<Catalogue> layers() {
        return layers;
    }

    /** All families, in order. */
    public List<Family> families() {
        return List.copyOf(families.values());
    }

    /** All products, in order. */
    public List<Product> products() {
        return List.copyOf(products.values());
    }

    /** All materials, in order. */
    public List<Material> materials() {
        return List.copyOf(materials.values());
    }

    /** All inks, in order. */
    public List<Ink> inks() {
        return List.copyOf(inks.values());
    }

    /** All print methods, in order. */
    public List<Method> methods() {
        return List.copyOf(methods.values());
    }

    /** The family with that id. */
    public Optional<Family> family(String id) {
        return Optional.ofNullable(families.get(id));
    }

    /** The product with that id. */
    public Optional<Product> product(String id) {
        return Optional.ofNullable(products.get(id));
    }

    /** The material with that id. */
    public Optional<Material> material(String id) {
        return Optional.ofNullable(materials.get(id));
    }

    /** The ink with that id. */
    public Optional<Ink> ink(String id) {
        return Optional.ofNullable(inks.get(id));
    }

    /** The print method with that id. */
    public Optional<Method> method(String id) {
        return Optional.ofNullable(methods.get(id));
    }

    /** The number that holds for every product; a later catalogue's wins. */
    public OptionalDouble setting(String key) {
        for (int i = layers.size() - 1; i >= 0; i--) {
            OptionalDouble found = find(layers.get(i).getSettings(), key);
            if (found.isPresent()) {
                return found;
            }
        }
        return OptionalDouble.empty();
    }

    /** The number of the first of these entries that has it, else the one that holds for every product. */
    public OptionalDouble setting(String key, Entry... entries) {
        for (Entry entry : entries) {
            OptionalDouble found = find(entry.getSettings(), key);
            if (found.isPresent()) {
                return found;
            }
        }
        return setting(key);
    }

    /** The number with that key; the last one when a list has it twice. */
    public static OptionalDouble find(List<Setting> settings, String key) {
        for (int i = settings.size() - 1; i >= 0; i--) {
            if (key.equals(settings.get(i).getKey())) {
                return OptionalDouble.of(settings.get(i).getValue());
            }
        }
        return OptionalDouble.empty();
    }

    /**
     * What a design refers to and no catalogue has, as words such as {@code ink "old-gold"}; empty when all is there.
     * Ids that are not set are named as {@code no product} and so on.
     *
     * @param reserved  ids that stand for no entry, such as the word for bare stock
     */
    public List<String> missing(Design design, Set<String> reserved) {
        List<String> missing = new ArrayList<>();
        note(missing, "product", design.getProduct(), products);
        note(missing, "material", design.getMaterial(), materials);
        note(missing, "method", design.getMethod(), methods);
        for (String ink : design.getInks()) {
            if (!reserved.contains(ink)) {
                note(missing, "ink", ink, inks);
            }
        }
        return List.copyOf(missing);
    }

    /** Everything wrong in the catalogues that can be told without building geometry; empty when nothing is. */
    public List<CatalogueProblem> problems() {
        return CatalogueProblems.of(this);
    }

    private static void note(List<String> missing, String kind, String id, Map<String, ?> known) {
        if (id == null || id.isEmpty()) {
            missing.add("no " + kind);
        } else if (!known.containsKey(id)) {
            missing.add(kind + " " + Quoted.of(id));
        }
    }

    private <E extends Entry> Map<String, E> merged(Function<Catalogue, List<E>> list) {
        Map<String, E> all = new LinkedHashMap<>();
        for (Catalogue layer : layers) {
            for (E entry : list.apply(layer)) {
                if (entry.getId() != null) {
                    all.put(entry.getId(), entry);
                }
            }
        }
        return Collections.unmodifiableMap(all);
    }
}
