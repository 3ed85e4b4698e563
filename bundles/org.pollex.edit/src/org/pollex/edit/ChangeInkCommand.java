/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.CataloguePackage;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;

/** Changes what a catalogue says of an ink; its id stays, so designs keep it. */
public final class ChangeInkCommand extends FeatureCommand {

    /**
     * What can be changed of an ink.
     *
     * @param name         shown to people; not blank
     * @param white        colour over white
     * @param black        colour over black
     * @param film         thickness of the dry film, micrometres; 0 or more
     * @param description  may be empty
     * @param source       where the numbers come from; may be empty
     */
    public record Values(String name, InkKind kind, Optional<LabColour> white, Optional<LabColour> black, double film,
            String description, String source) {

        /** What an ink has now. */
        public static Values of(Ink ink) {
            return new Values(text(ink.getName()), ink.getKind(), Optional.ofNullable(ink.getLab()),
                    Optional.ofNullable(ink.getLabOverBlack()), ink.getFilm(), text(ink.getDescription()),
                    text(ink.getSource()));
        }

        private static String text(String value) {
            return value == null ? "" : value;
        }
    }

    /** @param label what is changed, verb first */
    public ChangeInkCommand(String label, Ink ink, Values values) {
        super(label, ink, features(values));
    }

    private static Map<EStructuralFeature, Object> features(Values values) {
        if (values.name().isBlank() || !(values.film() >= 0)) {
            throw new IllegalArgumentException("An ink has a name and a film of 0 micrometres or more.");
        }
        Map<EStructuralFeature, Object> all = new LinkedHashMap<>();
        all.put(CataloguePackage.Literals.ENTRY__NAME, values.name());
        all.put(CataloguePackage.Literals.INK__KIND, values.kind());
        all.put(CataloguePackage.Literals.INK__LAB, values.white().orElse(null));
        all.put(CataloguePackage.Literals.INK__LAB_OVER_BLACK, values.black().orElse(null));
        all.put(CataloguePackage.Literals.INK__FILM, values.film());
        all.put(CataloguePackage.Literals.ENTRY__DESCRIPTION, empty(values.description()));
        all.put(CataloguePackage.Literals.ENTRY__SOURCE, empty(values.source()));
        return all;
    }

    private static String empty(String text) {
        return text.isEmpty() ? null : text;
    }
}
