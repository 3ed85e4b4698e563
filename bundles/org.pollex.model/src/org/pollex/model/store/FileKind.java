/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.emf.ecore.EClass;
import org.pollex.model.catalogue.CataloguePackage;
import org.pollex.model.design.DesignPackage;
import org.pollex.model.job.JobPackage;

/** The kinds of file that hold a model, each with its ending, its root element and the newest format. */
public enum FileKind {

    /** One design. */
    DESIGN("design", "design", 1),
    /** One job. */
    JOB("job", "job", 1),
    /** A studio's own products, materials, inks and methods. */
    CATALOGUE("catalogue", "catalogue", 1);

    private final String ending;
    private final String word;
    private final int format;

    FileKind(String ending, String word, int format) {
        this.ending = ending;
        this.word = word;
        this.format = format;
    }

    /** Ending of the file name, without the dot. */
    public String ending() {
        return ending;
    }

    /** What people call it. */
    public String word() {
        return word;
    }

    /** Format that this version writes, and the newest that it reads. */
    public int format() {
        return format;
    }

    /** The kind that the ending of a file name promises, whatever the case of its letters. */
    public static Optional<FileKind> of(Path path) {
        Path name = path.getFileName();
        if (name != null) {
            String text = name.toString();
            for (FileKind kind : values()) {
                int start = text.length() - kind.ending.length() - 1;
                if (start > 0 && text.charAt(start) == '.'
                        && text.regionMatches(true, start + 1, kind.ending, 0, kind.ending.length())) {
                    return Optional.of(kind);
                }
            }
        }
        return Optional.empty();
    }

    EClass root() {
        return switch (this) {
            case DESIGN -> DesignPackage.eINSTANCE.getDesign();
            case JOB -> JobPackage.eINSTANCE.getJob();
            case CATALOGUE -> CataloguePackage.eINSTANCE.getCatalogue();
        };
    }
}
