/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.retone;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pollex.making.job.JobMaker;
import org.pollex.making.retone.RetoneOrder;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.model.catalogue.TextureKind;
import org.pollex.model.design.Design;
import org.pollex.model.store.Catalogues;
import org.pollex.model.store.EntryNames;
import org.pollex.print.PrintedTones;
import org.pollex.print.retone.RetoneStyle;

/** What is chosen for a sibling. */
final class RetoneChoice {

    private final Path source;
    private final Design design;
    private final Catalogues known;
    private Material material;
    private Optional<Ink> ink = Optional.empty();
    private RetoneStyle style = RetoneStyle.USUAL;
    private String name = "";

    /** @param ownMaterial  whether to begin with the material of the design, and not with one of the other lightness */
    RetoneChoice(Path source, Design design, Catalogues known, boolean ownMaterial) {
        this.source = source;
        this.design = design;
        this.known = known;
        this.material = (ownMaterial ? known.material(design.getMaterial()) : Optional.<Material>empty())
                .orElseGet(this::opposite);
    }

    /** The plainest material of the other lightness: the one that differs most from the one of the design. */
    private Material opposite() {
        double l = known.material(design.getMaterial()).map(each -> PrintedTones.ground(each).l()).orElse(100.0);
        List<Material> plain = known.materials().stream().filter(RetoneChoice::isPlain).toList();
        return (plain.isEmpty() ? known.materials() : plain).stream()
                .max(Comparator.comparingDouble(each -> Math.abs(PrintedTones.ground(each).l() - l))).orElseThrow();
    }

    private static boolean isPlain(Material material) {
        boolean flat = material.getTexture() == null || material.getTexture().getKind() == TextureKind.FLAT;
        return flat && material.getCoreLab() == null && material.getTranslucency() == 0;
    }

    List<Material> materials() {
        return known.materials();
    }

    /** Inks that a sibling can print in alone; none for a method of full colour. */
    List<Ink> inks() {
        return method().map(Method::isFullColour).orElse(false) ? List.of() : known.inks().stream()
                .filter(each -> each.getKind() != InkKind.PROCESS && each.getLab() != null).toList();
    }

    private Optional<Method> method() {
        return known.method(design.getMethod());
    }

    /** What no choice of an ink means. */
    String usualInk() {
        return method().map(Method::isFullColour).orElse(false) ? "The colours of the design, over white"
                : design.getInks().size() > 1 ? "The inks of the design" : "The ink that shows best";
    }

    /** Whether there are several inks to choose from for each colour. */
    boolean severalInks() {
        return ink.isEmpty() && design.getInks().size() > 1 && !method().map(Method::isFullColour).orElse(false);
    }

    Material material() {
        return material;
    }

    void material(Material chosen) {
        material = chosen;
    }

    void ink(Optional<Ink> chosen) {
        ink = chosen;
    }

    RetoneStyle style() {
        return style;
    }

    void style(RetoneStyle chosen) {
        style = chosen;
    }

    void name(String text) {
        name = text;
    }

    /** A name for the sibling: that of its source and of the material. */
    String suggestion() {
        String file = source.getFileName().toString();
        return file.substring(0, file.lastIndexOf('.')) + " "
                + (material.getId().equals(design.getMaterial()) ? "re-toned" : EntryNames.of(material));
    }

    /** Where the sibling will be. */
    Path file() {
        return source.resolveSibling(JobMaker.fileName(name.isBlank() ? "sibling" : name) + ".design");
    }

    /** Why it cannot be made so; empty when it can. */
    Optional<String> trouble() {
        if (name.isBlank()) {
            return Optional.of("Write a name for the sibling.");
        }
        if (Files.exists(file())) {
            return Optional.of("There is a file " + file().getFileName() + " already; write another name.");
        }
        return Optional.empty();
    }

    RetoneOrder order() {
        return new RetoneOrder(source.toString(), material.getId(), ink.map(Ink::getId), file().toString(),
                new RetoneStyle(style.lines(), style.grow(), style.apart() && severalInks()));
    }
}
