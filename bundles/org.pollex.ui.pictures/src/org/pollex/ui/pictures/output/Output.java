/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures.output;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import org.pollex.editor.session.Known;
import org.pollex.model.store.StoreException;
import org.pollex.output.page.PageSize;
import org.pollex.output.picture.MaterialPicture;
import org.pollex.output.picture.PictureOptions;
import org.pollex.output.picture.PngFile;
import org.pollex.output.proof.ProofPdf;
import org.pollex.output.report.FindingsPage;
import org.pollex.rules.Suite;

/** What can be made from a design. */
public enum Output {
    /** All sides on their material. */
    PICTURE("picture", "png"),
    /** The page that the client signs. */
    PROOF("proof", "pdf"),
    /** The findings as a page to read and keep. */
    REPORT("report of findings", "html");

    private final String words;
    private final String extension;

    Output(String words, String extension) {
        this.words = words;
        this.extension = extension;
    }

    /** As the user calls it. */
    public String words() {
        return words;
    }

    /** Of the file, without a dot. */
    public String extension() {
        return extension;
    }

    /** What the file is called unless the user says otherwise. */
    public String nameFor(Path design) {
        String name = design.getFileName().toString().replaceFirst("\\.design$", "");
        return name + (this == REPORT ? "-findings." : ".") + extension;
    }

    /** The bytes of the file; throws when the job of the design cannot be read. Takes a second or two. */
    byte[] of(Path design, Known known, Suite suite, PictureOptions picture) throws StoreException {
        return switch (this) {
            case PICTURE -> PngFile.bytes(MaterialPicture.of(known.printed(), picture), picture.dpi());
            case PROOF -> ProofPdf.of(known.printed(), known.findings(),
                    JobFacts.of(design, known, LocalDate.now()), PageSize.A4);
            case REPORT -> FindingsPage.of(title(design, known), known.printed(), known.findings(), suite.checks(),
                    LocalDate.now()).getBytes(StandardCharsets.UTF_8);
        };
    }

    private static String title(Path design, Known known) {
        String name = known.printed().design().getName();
        return name == null ? design.getFileName().toString() : name;
    }
}
