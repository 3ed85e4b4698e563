/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.eclipse.emf.ecore.EAttribute;
import org.pollex.model.catalogue.Catalogue;
import org.pollex.model.catalogue.CataloguePackage;
import org.pollex.model.catalogue.Entry;
import org.pollex.model.catalogue.Face;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.model.catalogue.PhotoArea;
import org.pollex.model.catalogue.Product;
import org.pollex.model.catalogue.Setting;
import org.pollex.model.catalogue.Texture;
import org.pollex.model.catalogue.TextureKind;

/** Finds what is wrong in catalogues: ids twice in one, references to nothing, entries without their numbers. */
final class CatalogueProblems {

    /** Words that designs use where an ink is named and no ink is meant. */
    private static final Set<String> RESERVED_INKS = Set.of("bare", "process", "none");

    private final Catalogues all;
    private final Catalogue catalogue;
    private final List<CatalogueProblem> problems;

    private CatalogueProblems(Catalogues all, Catalogue catalogue, List<CatalogueProblem> problems) {
        this.all = all;
        this.catalogue = catalogue;
        this.problems = problems;
    }

    static List<CatalogueProblem> of(Catalogues all) {
        List<CatalogueProblem> problems = new ArrayList<>();
        for (Catalogue catalogue : all.layers()) {
            new CatalogueProblems(all, catalogue, problems).collect();
        }
        return List.copyOf(problems);
    }

    private void collect() {
        entries(catalogue.getFamilies());
        entries(catalogue.getProducts());
        entries(catalogue.getMaterials());
        entries(catalogue.getInks());
        entries(catalogue.getMethods());
        settings("the catalogue", catalogue.getSettings());
        catalogue.getProducts().forEach(this::product);
        catalogue.getMaterials().forEach(this::material);
        catalogue.getInks().forEach(this::ink);
        catalogue.getMethods().forEach(this::method);
    }

    private void entries(List<? extends Entry> entries) {
        Set<String> ids = new HashSet<>();
        for (Entry entry : entries) {
            if (entry.getId() == null || entry.getId().isBlank()) {
                add(entry, "has no id, so no design can name it; give it one.");
            } else if (!ids.add(entry.getId())) {
                add(entry, "is there twice, and only the last one counts; rename or remove one.");
            }
            if (entry.getName() == null || entry.getName().isBlank()) {
                add(entry, "has no name to show; give it one.");
            }
            settings(label(entry), entry.getSettings());
        }
    }

    private void settings(String owner, List<Setting> settings) {
        Set<String> keys = new HashSet<>();
        for (Setting setting : settings) {
            if (setting.getKey() == null || setting.getKey().isBlank()) {
                add(owner, "has a setting without a key; give it one or remove it.");
            } else if (!keys.add(setting.getKey())) {
                add(owner, "has the setting " + Quoted.of(setting.getKey())
                        + " twice, and only the last one counts; remove one.");
            }
        }
    }

    private void product(Product product) {
        if (all.family(product.getFamily()).isEmpty()) {
            add(product, product.getFamily() == null ? "names no family; give it one."
                    : "names the family " + Quoted.of(product.getFamily())
                            + ", which no catalogue has; correct it or add the family.");
        }
        if (product.getFaces().isEmpty()) {
            add(product, "has no face to print on; give it a front.");
        }
        Set<String> faces = new HashSet<>();
        for (Face face : product.getFaces()) {
            if (face.getName() == null || face.getName().isBlank()) {
                add(product, "has a face without a name; call it front or back.");
            } else if (!faces.add(face.getName())) {
                add(product, "has two faces named " + Quoted.of(face.getName()) + "; rename or remove one.");
            }
            settings(label(product), face.getWear());
        }
        settings(label(product), product.getDimensions());
    }

    private void material(Material material) {
        if (material.getLab() == null) {
            add(material, "has no colour; give it a lab.");
        }
        if (material.getTexture() != null && material.getTexture().getKind() == TextureKind.SWATCH
                && (material.getTexture().getPicture() == null || material.getTexture().getPicture().isBlank())) {
            add(material, "has a swatch texture without a picture; name the picture.");
        }
        if (material.getTexture() != null) {
            photo(material, material.getTexture());
        }
    }

    private void photo(Material material, Texture texture) {
        if (texture.getKind() != TextureKind.SWATCH && (texture.getCrop() != null || texture.getGrey() != null)) {
            add(material, "has a crop or a grey patch but no swatch texture; make it one or remove them.");
        }
        area(material, "crop", texture.getCrop());
        area(material, "grey patch", texture.getGrey());
        if (texture.getGrey() != null && !(texture.getGrey().getLightness() > 0)) {
            add(material, "has a grey patch without a lightness; give it the L* that the grey is known to have.");
        }
    }

    private void area(Material material, String what, PhotoArea area) {
        if (area != null && !(area.getWidth() > 0 && area.getHeight() > 0)) {
            add(material, "has a " + what + " without a width or a height; give it both.");
        }
    }

    private void ink(Ink ink) {
        if (ink.getId() != null && RESERVED_INKS.contains(ink.getId())) {
            add(ink, "has an id that designs use for something else; give it another.");
        }
        if (ink.getLab() == null) {
            add(ink, "has no colour over white; give it a lab.");
        }
        if (ink.getLabOverBlack() == null) {
            add(ink, "has no colour over black; give it a labOverBlack.");
        }
    }

    private void method(Method method) {
        CataloguePackage model = CataloguePackage.eINSTANCE;
        for (EAttribute limit : List.of(model.getMethod_LineMin(), model.getMethod_GapMin(),
                model.getMethod_LineMinReversed(), model.getMethod_GapMinReversed(), model.getMethod_TypeMin(),
                model.getMethod_InksMax(), model.getMethod_Resolution())) {
            if (!(((Number) method.eGet(limit)).doubleValue() > 0)) {
                add(method, "has no " + limit.getName() + "; give it a number above 0.");
            }
        }
    }

    private void add(Entry entry, String what) {
        add(label(entry), what);
    }

    private void add(String label, String what) {
        problems.add(new CatalogueProblem(catalogue.getName() == null ? "" : catalogue.getName(), label,
                Quoted.clean(label + " " + what)));
    }

    private static String label(Entry entry) {
        return entry.eClass().getName().toLowerCase(Locale.ROOT) + " "
                + Quoted.of(entry.getId() == null ? "" : entry.getId());
    }
}
